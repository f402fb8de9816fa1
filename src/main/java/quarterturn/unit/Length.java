package quarterturn.unit;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A length in millimetres.
 *
 * <p>{@link #parse} takes what people type: {@code 0.3}, {@code 0,30 mm}, {@code .012"}, {@code 12
 * thou}, {@code 1/64 in}, {@code 34in}. A bare number is millimetres.
 */
public record Length(double mm) {
  /** Millimetres in one inch, exact since 1959. */
  public static final double MM_PER_INCH = 25.4;

  private static final Pattern TYPED =
      Pattern.compile(
          "([-+]?)(?:(\\d{1,4})\\s*/\\s*(\\d{1,4})|(\\d{0,6}(?:[.,]\\d{0,15})?))\\s*"
              + "(mm|cm|m|in|inch|inches|\"|''|″|thou|mil)?");

  public Length {
    if (!Double.isFinite(mm)) {
      throw new IllegalArgumentException("a length must be a finite number of millimetres");
    }
  }

  public static Length mm(double mm) {
    return new Length(mm);
  }

  public static Length inches(double inches) {
    return new Length(inches * MM_PER_INCH);
  }

  /**
   * Reads a typed length.
   *
   * @throws NotUnderstoodException with the spellings that are understood
   */
  public static Length parse(String typed) {
    Matcher m = TYPED.matcher(Digits.unended(Digits.plain(typed)));
    if (!m.matches()) {
      throw no(typed);
    }
    double number = Typed.number(m.group(2), m.group(3), m.group(4));
    if (!Double.isFinite(number)) {
      throw no(typed);
    }
    double signed = "-".equals(m.group(1)) ? -number : number;
    String unit = m.group(5) == null ? "mm" : m.group(5);
    return switch (unit) {
      case "mm" -> mm(signed);
      case "cm" -> mm(signed * 10);
      case "m" -> mm(signed * 1000);
      case "thou", "mil" -> inches(signed / 1000);
      default -> inches(signed);
    };
  }

  private static NotUnderstoodException no(String typed) {
    return Typed.no(typed, "a length", "0.30, 0.30 mm, .012\", 12 thou or 1/64 in");
  }

  /** The length in inches. */
  public double inches() {
    return mm / MM_PER_INCH;
  }

  /**
   * The length in millimetres with as many digits as it needs, at most four after the point; {@link
   * #parse} reads it.
   */
  @Override
  public String toString() {
    return Decimals.plain(mm) + " mm";
  }
}
