package quarterturn.unit;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Prints numbers with the digits their gauge can answer for, and no more. */
public final class Decimals {
  private Decimals() {}

  /**
   * The number of decimals that a step needs: 0.05 needs two, 0.1 one, 1 none.
   *
   * @param step smallest difference the gauge can show; must be above zero
   */
  public static int of(double step) {
    if (!(step > 0)) {
      throw new IllegalArgumentException("a gauge's step must be above zero, not " + step);
    }
    BigDecimal exact = BigDecimal.valueOf(step).setScale(4, RoundingMode.HALF_UP);
    return Math.max(0, exact.stripTrailingZeros().scale());
  }

  /** {@code value} rounded half up to {@code decimals} digits after the point, never as "-0". */
  public static String print(double value, int decimals) {
    BigDecimal rounded = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
    if (rounded.signum() == 0) {
      rounded = BigDecimal.ZERO.setScale(decimals);
    }
    return rounded.toPlainString();
  }

  /** {@code value} with as many digits as it has, at most four after the point. */
  public static String plain(double value) {
    BigDecimal rounded =
        BigDecimal.valueOf(value).setScale(4, RoundingMode.HALF_UP).stripTrailingZeros();
    return rounded.signum() == 0
        ? "0"
        : rounded.setScale(Math.max(0, rounded.scale())).toPlainString();
  }
}
