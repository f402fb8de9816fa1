package quarterturn.rehearsal.simulated;

import quarterturn.craft.Held;
import quarterturn.craft.Intonation;
import quarterturn.craft.Neck;
import quarterturn.craft.Scale;
import quarterturn.craft.StringLine;
import quarterturn.procedure.Adjustment;
import quarterturn.procedure.kind.BridgeKind;
import quarterturn.procedure.kind.Kind;
import quarterturn.procedure.kind.Quantity;
import quarterturn.unit.Length;

/**
 * A simulated instrument with a simulated neck. A saddle raises its string by half as much at fret
 * 12, its place moves the octave, and the neck's relief changes the action.
 */
public final class SimulatedInstrument {
  /** Cents of sharpness for each millimetre that a string is pressed down farther; an estimate. */
  private static final double CENTS_FOR_A_MM = 2;

  /** Step in millimetres of stacked gauges, by which an action is read. */
  private static final double STACKED_MM = 0.1;

  private final InstrumentTraits traits;
  private final SimulatedNeck neck;
  private final Kind kind;
  private final double found;
  private final double gain;
  private final double[] raised;
  private final double[] back;
  private final double[] pickup;
  private boolean otherSet;

  /** An instrument as found, with a neck made from the same traits. */
  public SimulatedInstrument(InstrumentTraits traits, SimulatedNeck neck, Kind kind) {
    this.traits = traits;
    this.neck = neck;
    this.kind = kind;
    this.found = neck.relief();
    int strings = kind.strings().size();
    this.raised = new double[strings];
    this.back = new double[strings];
    this.pickup = new double[strings];
    Held held = Held.at(kind.jointFret(), kind.readAt());
    Neck bent = Neck.uniform(new Scale(kind.scale()), kind.jointFret(), Length.mm(0.3), held);
    this.gain = StringLine.actionPerRelief(bent, Quantity.OCTAVE, held);
  }

  public InstrumentTraits traits() {
    return traits;
  }

  public SimulatedNeck neck() {
    return neck;
  }

  public Kind kind() {
    return kind;
  }

  /** Whether the saddles can be moved. */
  public boolean adjustable() {
    return kind.make().bridge() != BridgeKind.FIXED;
  }

  /** Whether there are pickups whose height can be read. */
  public boolean pickups() {
    return !traits.pickupGap().isEmpty();
  }

  /** Fits another set of strings, whose pull differs; only the first call has an effect. */
  public void otherSet() {
    if (!otherSet) {
      otherSet = true;
      neck.push(traits.newSet());
    }
  }

  /** Sets a saddle or a pickup on one string; plus is up, or away from the nut. */
  public void adjust(Adjustment what, int string, double mm) {
    switch (what) {
      case SADDLE_HEIGHT -> raised[string] += mm;
      case SADDLE_PLACE -> back[string] += mm;
      case PICKUP_HEIGHT -> pickup[string] += mm;
    }
  }

  /** Sets both ends of a bridge on posts for the outer strings; the inner ones follow it. */
  public void setPosts() {
    int last = raised.length - 1;
    double low = traits.wanted().get(0) - action(0);
    double high = traits.wanted().get(last) - action(last);
    for (int i = 0; i <= last; i++) {
      raised[i] += 2 * (low + (high - low) * i / Math.max(1, last));
    }
  }

  /** The true height of the open string over fret 12, in millimetres. */
  public double action(int string) {
    return traits.action().get(string) + raised[string] / 2 + gain * (neck.relief() - found);
  }

  /** A reading of a quantity that is one number, rounded as a careful person reads it. */
  public double read(Quantity quantity, int string) {
    return switch (quantity) {
      case ACTION -> rounded(Math.max(0.5, action(string)), STACKED_MM);
      case INTONATION -> Math.rint(intonation(string));
      case PICKUP_GAP -> rounded(Math.max(0, traits.pickupGap().get(string) - pickup[string]), 0.5);
      default -> throw new IllegalArgumentException(quantity.word() + " is no number on a string");
    };
  }

  /** The gap over fret 1, in millimetres. */
  public double nutClearance(int string) {
    return traits.nutClearance().get(string);
  }

  private double intonation(int string) {
    double perCent = Intonation.mmPerCent(new Scale(kind.scale(string)), Quantity.OCTAVE);
    double higher = action(string) - traits.action().get(string);
    return traits.intonation().get(string) - back[string] / perCent + CENTS_FOR_A_MM * higher;
  }

  private static double rounded(double value, double step) {
    return Math.rint(Math.rint(value / step) * step * 1000) / 1000;
  }
}
