package quarterturn.rehearsal.simulated;

import quarterturn.unit.Bracket;

/**
 * A set of feeler leaves in even steps.
 *
 * @param stepMm difference between neighbouring leaves and thickness of the thinnest, in
 *     millimetres
 * @param thickestMm the thickest leaf, in millimetres
 */
public record Feelers(double stepMm, double thickestMm) {
  /** Leaves from 0.05 to 1.00 mm in steps of 0.05 mm, as the relief procedure asks for. */
  public static final Feelers USUAL = new Feelers(0.05, 1.0);

  public Feelers {
    if (!(stepMm > 0 && thickestMm >= stepMm)) {
      throw new IllegalArgumentException("gauges need a step, and one gauge at least");
    }
  }

  /**
   * The bracket that these leaves give for a gap in millimetres; below zero the string rests on the
   * fret.
   */
  public Bracket read(double gapMm) {
    if (gapMm <= 0) {
      return Bracket.touches();
    }
    long passing = (long) Math.floor(gapMm / stepMm + 1e-9);
    if (passing == 0) {
      return Bracket.lifts(stepMm);
    }
    return gapMm >= thickestMm
        ? Bracket.passes(thickestMm)
        : new Bracket(round(passing * stepMm), round((passing + 1) * stepMm));
  }

  /**
   * Rounds to a thousandth of a millimetre, so that a bound and an equal end of a window compare
   * equal.
   */
  private static double round(double mm) {
    return Math.rint(mm * 1000) / 1000;
  }
}
