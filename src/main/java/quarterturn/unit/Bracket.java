package quarterturn.unit;

/**
 * A gauge reading: the gap is at least {@code lowMm} and at most {@code highMm}.
 *
 * <p>{@code lowMm} is minus infinity where no gap was found (the string touches, or even the
 * thinnest leaf lifts it), since the size of a back bow can't be measured. {@code highMm} is plus
 * infinity where even the thickest leaf passes. Both are in millimetres; {@link BracketParser}
 * reads typed brackets.
 */
public record Bracket(double lowMm, double highMm) {
  public Bracket {
    if (Double.isNaN(lowMm) || Double.isNaN(highMm) || lowMm > highMm) {
      throw new NotUnderstoodException(
          "the gauge that passes must be thinner than the one that pushes the string up");
    }
    if (lowMm == Double.POSITIVE_INFINITY || highMm == Double.NEGATIVE_INFINITY) {
      throw new NotUnderstoodException(
          "a reading needs a gauge that passes or one that pushes the string up");
    }
    if (Double.isInfinite(lowMm) && Double.isInfinite(highMm)) {
      throw new NotUnderstoodException(
          "a reading needs a gauge that passes or one that pushes the string up");
    }
  }

  /** A reading of a string that rests on the fret: straight or bowed back, by an unknown amount. */
  public static Bracket touches() {
    return new Bracket(Double.NEGATIVE_INFINITY, 0);
  }

  /** A reading in which a leaf of {@code mm} passes and no thicker one was tried. */
  public static Bracket passes(double mm) {
    return new Bracket(mm, Double.POSITIVE_INFINITY);
  }

  /** A reading in which a leaf of {@code mm} lifts the string and no thinner one was tried. */
  public static Bracket lifts(double mm) {
    return new Bracket(Double.NEGATIVE_INFINITY, mm);
  }

  /** Whether no gap was found, so that its size, or a back bow, is unknown. */
  public boolean noGap() {
    return Double.isInfinite(lowMm);
  }

  /** Whether the gap is larger than the thickest leaf. */
  public boolean beyondGauge() {
    return Double.isInfinite(highMm);
  }

  /** Whether both bounds are known. */
  public boolean bounded() {
    return !noGap() && !beyondGauge();
  }

  /** Half way between the bounds; for an open bracket the known bound. */
  public double middleMm() {
    return noGap() ? highMm : beyondGauge() ? lowMm : (lowMm + highMm) / 2;
  }

  /** Difference between the bounds; infinite for an open bracket. */
  public double widthMm() {
    return highMm - lowMm;
  }

  /**
   * The bracket in words: "0.30 to 0.35 mm", "touches (no gap)", "under 0.05 mm", "over 1.00 mm".
   */
  @Override
  public String toString() {
    if (noGap()) {
      return highMm <= 0 ? "touches (no gap)" : "under " + digits(highMm) + " mm";
    }
    if (beyondGauge()) {
      return "over " + digits(lowMm) + " mm";
    }
    return digits(lowMm) + " to " + digits(highMm) + " mm";
  }

  /** The bracket as a person would type it: "0.30 passes, 0.35 lifts", "touches". */
  public String typed() {
    if (noGap()) {
      return highMm <= 0 ? "touches" : digits(highMm) + " lifts";
    }
    String passes = digits(lowMm) + " passes";
    return beyondGauge() ? passes : passes + ", " + digits(highMm) + " lifts";
  }

  /** A bound with two decimals, or three where it was given finer (a half step, thousandths). */
  private static String digits(double mm) {
    boolean coarse = Math.abs(mm * 100 - Math.rint(mm * 100)) < 1e-6;
    return Decimals.print(mm, coarse ? 2 : 3);
  }
}
