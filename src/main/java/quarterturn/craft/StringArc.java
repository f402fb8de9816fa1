package quarterturn.craft;

import quarterturn.unit.Length;
import quarterturn.unit.NotUnderstoodException;

/**
 * The arc that strings follow over a rounded board: at sideways offset y a point of the board lies
 * {@code R - sqrt(R^2 - y^2)} below its centre line.
 */
public final class StringArc {
  private StringArc() {}

  /**
   * The drop of each string below the board's centre line, bass side first, in millimetres.
   *
   * @param radius of the board's cross-section
   * @param spread from the first to the last string; they stand evenly
   * @param strings two or more
   */
  public static double[] dropMm(Length radius, Length spread, int strings) {
    if (strings < 2) {
      throw new NotUnderstoodException("an arc needs two strings or more");
    }
    if (!(spread.mm() > 0)) {
      throw new NotUnderstoodException("the spread of the strings must be above zero");
    }
    if (!(radius.mm() > spread.mm() / 2)) {
      throw new NotUnderstoodException(
          "the radius must be larger than half the spread of the strings");
    }
    double[] drops = new double[strings];
    for (int i = 0; i < strings; i++) {
      double y = spread.mm() * (i / (strings - 1.0) - 0.5);
      // The same as R - sqrt(R^2 - y^2), without the loss of digits over a flat board.
      drops[i] = y * y / (radius.mm() + Math.sqrt(radius.mm() * radius.mm() - y * y));
    }
    return drops;
  }
}
