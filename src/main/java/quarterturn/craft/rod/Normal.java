package quarterturn.craft.rod;

/** The normal distribution's cumulative function, from a table, for what is asked very often. */
final class Normal {
  private static final int PER_UNIT = 64;
  private static final int REACH = 8;
  private static final double[] TABLE = table();

  private Normal() {}

  /**
   * Chance that a standard normal number is below {@code z}. Between the table's points a straight
   * line stands in for the curve, at most {@code 1e-5} off.
   */
  static double below(double z) {
    double at = (z + REACH) * PER_UNIT;
    if (!(at > 0)) {
      return 0;
    }
    if (at >= TABLE.length - 1) {
      return 1;
    }
    int i = (int) at;
    return TABLE[i] + (at - i) * (TABLE[i + 1] - TABLE[i]);
  }

  /** Simpson's rule over the density, step by step from the middle out. */
  private static double[] table() {
    double[] table = new double[2 * REACH * PER_UNIT + 1];
    int middle = REACH * PER_UNIT;
    table[middle] = 0.5;
    double step = 1.0 / PER_UNIT;
    for (int i = 1; i <= middle; i++) {
      double from = (i - 1) * step;
      double area =
          (density(from) + 4 * density(from + step / 2) + density(from + step)) * step / 6;
      table[middle + i] = table[middle + i - 1] + area;
      table[middle - i] = 1 - table[middle + i];
    }
    return table;
  }

  private static double density(double z) {
    return Math.exp(-z * z / 2) / Math.sqrt(2 * Math.PI);
  }
}
