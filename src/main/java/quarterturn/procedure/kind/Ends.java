package quarterturn.procedure.kind;

import quarterturn.craft.Window;

/**
 * Windows of a quantity at the two outer strings; those between lie evenly between them.
 *
 * @param low for the lowest string
 * @param high for the highest string
 * @param source where they come from
 */
public record Ends(Window low, Window high, String source) {
  /** One window for every string. */
  public static Ends all(Window window, String source) {
    return new Ends(window, window, source);
  }

  /**
   * The window of one string.
   *
   * @param index 0 for the lowest string
   * @param strings how many there are
   */
  public Window at(int index, int strings) {
    if (low.equals(high)) {
      return low;
    }
    double share = strings < 2 ? 0 : (double) index / (strings - 1);
    return new Window(
        between(low.lowMm(), high.lowMm(), share), between(low.highMm(), high.highMm(), share));
  }

  private static double between(double one, double other, double share) {
    // To hundredths, as a gauge reads them.
    return Math.rint(100 * (one + (other - one) * share)) / 100;
  }
}
