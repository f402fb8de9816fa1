package quarterturn.session.store.archive;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import quarterturn.unit.Counted;

/** Lengths of files in words. */
public final class Bytes {
  private static final List<String> UNITS = List.of("kB", "MB", "GB", "TB");
  private static final int STEP = 1000;
  private static final MathContext SHOWN = new MathContext(2, RoundingMode.HALF_UP);

  private Bytes() {}

  /** A length with two digits: "812 bytes", "1.3 MB". */
  public static String words(long bytes) {
    if (bytes < STEP) {
      return Counted.of(bytes, "byte");
    }
    BigDecimal left = BigDecimal.valueOf(bytes).round(SHOWN);
    int unit = -1;
    while (left.compareTo(BigDecimal.valueOf(STEP)) >= 0 && unit < UNITS.size() - 1) {
      left = left.movePointLeft(3);
      unit++;
    }
    return left.stripTrailingZeros().toPlainString() + " " + UNITS.get(unit);
  }
}
