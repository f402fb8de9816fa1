package quarterturn.procedure.kind;

import java.util.List;
import quarterturn.craft.EvenBow;
import quarterturn.craft.Held;
import quarterturn.craft.Scale;
import quarterturn.unit.Cents;
import quarterturn.unit.Humidity;
import quarterturn.unit.Length;
import quarterturn.unit.NotUnderstoodException;
import quarterturn.unit.Temperature;
import quarterturn.unit.Worded;

/** What can be measured, in which unit and by which convention. */
public enum Quantity implements Worded {
  /** Gap under a string held at fret 1 and at the joint fret, by thickness gauges. */
  RELIEF("mm", true, true),
  /** Gap under a string held at frets 1 and 7, which shows the bow of that part of the neck. */
  BOW_NUT_END("mm", true, true),
  /** Gap under a string held at frets 5 and 12. */
  BOW_MIDDLE("mm", true, true),
  /** Gap under a string held at fret 7 and at the joint fret. */
  BOW_JOINT("mm", true, true),
  /** Gap under a string held at fret 12 and at the last fret. */
  BOW_BODY_END("mm", true, true),
  /** Gap over fret 1 with the string pressed between frets 2 and 3, by thickness gauges. */
  NUT_CLEARANCE("mm", true, true),
  /** Underside of the open string to the top of fret 12. */
  ACTION("mm", false, true),
  /** Note at fret 12 against the open string's octave; plus is sharp. */
  INTONATION("cents", false, true),
  /** Underside of the string, pressed at the last fret, to the top of the pole. */
  PICKUP_GAP("mm", false, true),
  /** Relative humidity of the room. */
  HUMIDITY("%", false, false),
  /** Temperature of the room. */
  TEMPERATURE("C", false, false);

  /** The fret an octave above the open string, at which action is read. */
  public static final int OCTAVE = 12;

  /** Fret over which the bow before the joint is read, where the joint is not itself so near. */
  private static final int BEFORE_JOINT = 11;

  private final String unit;
  private final boolean bracket;
  private final boolean onString;

  Quantity(String unit, boolean bracket, boolean onString) {
    this.unit = unit;
    this.bracket = bracket;
    this.onString = onString;
  }

  public String unit() {
    return unit;
  }

  /** What people call it: "nut clearance", "bow at the nut end". */
  public String said() {
    return switch (this) {
      case BOW_NUT_END -> "bow at the nut end";
      case BOW_MIDDLE -> "bow in the middle";
      case BOW_JOINT -> "bow before the joint";
      case BOW_BODY_END -> "bow at the body end";
      case RELIEF, NUT_CLEARANCE, ACTION, INTONATION, PICKUP_GAP, HUMIDITY, TEMPERATURE ->
          word().replace('-', ' ');
    };
  }

  /** Whether this quantity is read as a bracket (and can touch), not as one number. */
  public boolean bracket() {
    return bracket;
  }

  /** Whether this quantity is read on a string, and has a window. */
  public boolean onString() {
    return onString;
  }

  /** Whether one reading, on the lowest string, is held to the window: the neck's bow or a part. */
  public boolean ofBow() {
    return this == RELIEF || ofPart();
  }

  /** Whether this is the bow of a part of the neck, whose window follows from the relief. */
  public boolean ofPart() {
    return switch (this) {
      case BOW_NUT_END, BOW_MIDDLE, BOW_JOINT, BOW_BODY_END -> true;
      case RELIEF, NUT_CLEARANCE, ACTION, INTONATION, PICKUP_GAP, HUMIDITY, TEMPERATURE -> false;
    };
  }

  /** The frets at which the string is held, by this program's convention. */
  public List<Integer> held(Kind kind) {
    return switch (this) {
      case RELIEF -> List.of(1, kind.jointFret());
      case BOW_NUT_END -> List.of(1, 7);
      case BOW_MIDDLE -> List.of(5, OCTAVE);
      case BOW_JOINT -> List.of(7, kind.jointFret());
      case BOW_BODY_END -> List.of(OCTAVE, kind.frets());
      case NUT_CLEARANCE -> List.of(3);
      case INTONATION -> List.of(OCTAVE);
      case PICKUP_GAP -> List.of(kind.frets());
      case ACTION, HUMIDITY, TEMPERATURE -> List.of();
    };
  }

  /** The fret over which the gap is read, 0 where none is. */
  public int readAt(Kind kind) {
    return switch (this) {
      case RELIEF -> kind.readAt();
      case BOW_NUT_END -> 4;
      case BOW_MIDDLE -> 8;
      case BOW_JOINT -> Math.min(BEFORE_JOINT, kind.jointFret() - 2);
      case BOW_BODY_END -> (OCTAVE + kind.frets()) / 2 - 1;
      case NUT_CLEARANCE -> 1;
      case ACTION -> OCTAVE;
      case INTONATION, PICKUP_GAP, HUMIDITY, TEMPERATURE -> 0;
    };
  }

  /** What an even bow shows of a part, for each millimetre of relief. */
  public double share(Kind kind) {
    return EvenBow.share(new Scale(kind.scale()), kind.jointFret(), RELIEF.span(kind), span(kind));
  }

  private Held span(Kind kind) {
    List<Integer> held = held(kind);
    return new Held(held.get(0), held.get(1), readAt(kind));
  }

  /**
   * Reads a typed number of this quantity, in its unit.
   *
   * @throws NotUnderstoodException with what may be typed
   */
  public double value(String typed) {
    return switch (this) {
      case ACTION, PICKUP_GAP -> Length.parse(typed).mm();
      case INTONATION -> Cents.parse(typed).cents();
      case HUMIDITY -> Humidity.parse(typed).percent();
      case TEMPERATURE -> Temperature.parse(typed).celsius();
      case RELIEF, BOW_NUT_END, BOW_MIDDLE, BOW_JOINT, BOW_BODY_END, NUT_CLEARANCE ->
          throw new IllegalStateException(word() + " is read as a bracket, not as one number");
    };
  }

  /** An example of a typed number. */
  public String example() {
    return switch (this) {
      case ACTION, PICKUP_GAP -> "2.25";
      case INTONATION -> "-3, or 6 where it is sharp";
      case TEMPERATURE -> "21 C";
      case RELIEF, BOW_NUT_END, BOW_MIDDLE, BOW_JOINT, BOW_BODY_END, NUT_CLEARANCE ->
          "0.30 passes 0.35 lifts";
      case HUMIDITY -> "48";
    };
  }
}
