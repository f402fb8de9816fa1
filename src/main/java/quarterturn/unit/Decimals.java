package quarterturn.unit;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import org.jspecify.annotations.Nullable;

/** Prints numbers with no more digits than their gauge can measure. */
public final class Decimals {
  private static final int MOST = 4;
  private static final MathContext TWELVE_DIGITS = new MathContext(12);

  private Decimals() {}

  /**
   * The number of decimals for a gauge's step, at most four: 0.05 needs two, 0.1 one, 1 none.
   *
   * @param step smallest difference the gauge can show, above zero
   */
  public static int of(double step) {
    if (!(step > 0) || Double.isInfinite(step)) {
      throw new IllegalArgumentException("a gauge's step must be above zero, not " + step);
    }
    BigDecimal exact = BigDecimal.valueOf(step).setScale(MOST, RoundingMode.HALF_UP);
    return exact.signum() == 0 ? MOST : Math.max(0, exact.stripTrailingZeros().scale());
  }

  /**
   * {@code value} with {@code decimals} digits after the point, a half rounded away from zero,
   * never "-0".
   */
  public static String print(double value, int decimals) {
    BigDecimal rounded = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
    if (rounded.signum() == 0) {
      rounded = BigDecimal.ZERO.setScale(decimals);
    }
    return rounded.toPlainString();
  }

  /**
   * {@code value} to twelve digits, for programs, without binary rounding errors; null where not
   * finite.
   */
  public static @Nullable BigDecimal twelveDigits(double value) {
    if (!Double.isFinite(value)) {
      return null;
    }
    BigDecimal rounded = new BigDecimal(value).round(TWELVE_DIGITS).stripTrailingZeros();
    return rounded.signum() == 0 ? BigDecimal.ZERO : rounded;
  }

  /** {@code value} rounded to four decimals, as {@link #plain} prints it. */
  public static double kept(double value) {
    return Double.parseDouble(plain(value));
  }

  /** {@code value} with as many digits as it needs, at most four after the point. */
  public static String plain(double value) {
    BigDecimal rounded =
        BigDecimal.valueOf(value).setScale(MOST, RoundingMode.HALF_UP).stripTrailingZeros();
    return rounded.signum() == 0
        ? "0"
        : rounded.setScale(Math.max(0, rounded.scale())).toPlainString();
  }
}
