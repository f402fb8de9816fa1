package quarterturn.craft;

import quarterturn.unit.Cents;
import quarterturn.unit.Force;
import quarterturn.unit.Length;
import quarterturn.unit.NotUnderstoodException;

/**
 * How much pressing a string sharpens it, by stretch alone.
 *
 * <p>Straight neck. At rest the string runs from the nut slot {@code (0, h)} to the saddle {@code
 * (L, s)}; pressed it runs over the fret's top {@code (x_n, 0)}, and where the finger pushes on
 * below that level, through a point behind the fret. The stretch e of that line raises the tension
 * by {@code EA e}, with the cross-section of the core (a wrap carries nothing), and so the pitch by
 * {@code 1200 log2 sqrt(1 + EA e / T)} cents. A finger presses {@link #BEHIND_MM} behind the fret
 * or in the middle of its space, whichever is nearer; an estimate.
 *
 * <p>Assumes that the string slides freely over nut and saddle, and leaves out stiffness ({@link
 * Stiffness}) and where the saddle stands ({@link Intonation}).
 */
public final class Sharpening {
  /** Where a finger presses, behind the fret, in millimetres; an estimate. */
  public static final double BEHIND_MM = 10;

  private Sharpening() {}

  /**
   * The sharpening at a fret.
   *
   * @param steel diameter of the core, or of a plain string
   * @param nutHeight bottom of the nut slot above the plane of the fret tops
   * @param action12 of the open string at fret 12
   * @param fret 1 or more
   * @param pressBehind how far below the fret tops the finger pushes the string, zero or more
   */
  public static Cents of(
      Scale scale,
      Force tension,
      Length steel,
      Length nutHeight,
      Length action12,
      int fret,
      Length pressBehind) {
    if (fret < 1) {
      throw new NotUnderstoodException("a pressed string needs fret 1 or more, not " + fret);
    }
    if (!(tension.newtons() > 0)) {
      throw new NotUnderstoodException("a string's tension must be above zero");
    }
    if (pressBehind.mm() < 0) {
      throw new NotUnderstoodException("a finger can't press a string up");
    }
    double saddle =
        StringLine.withAction(Neck.straight(scale, 2), nutHeight, 12, action12).saddle().mm();
    double at = scale.fretMm(fret);
    double open = Math.hypot(scale.mm(), saddle - nutHeight.mm());
    double behind = Math.min(BEHIND_MM, (at - scale.fretMm(fret - 1)) / 2);
    double depth = pressBehind.mm();
    double pressed =
        (depth > 0
                ? Math.hypot(at - behind, nutHeight.mm() + depth) + Math.hypot(behind, depth)
                : Math.hypot(at, nutHeight.mm()))
            + Math.hypot(scale.mm() - at, saddle);
    double strain = pressed / open - 1;
    return Cents.ofRatio(
        Math.sqrt(1 + StringGauge.stretchNewtons(steel) / tension.newtons() * strain));
  }
}
