package quarterturn.unit;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * A typed number with its unit: {@code 180N}, {@code 68 °F}, {@code -2,5 cents}. The unit is the
 * text after the number in lower case, or empty.
 */
record Typed(double number, String unit) {
  private static final Pattern TYPED =
      Pattern.compile(
          "([-+]?(?:\\d{1,9}(?:[.,]\\d{0,15})?|[.,]\\d{1,15}))\\s*([^\\d\\s.,][^\\d]*)?");

  /**
   * Reads {@code text}; where that is not a number with a unit, the unit is one that nothing has.
   */
  static Typed read(String text) {
    Matcher m = TYPED.matcher(Digits.unended(Digits.plain(text)));
    if (!m.matches()) {
      return new Typed(0, "?");
    }
    String unit = m.group(2) == null ? "" : m.group(2);
    return new Typed(Double.parseDouble(m.group(1).replace(',', '.')), unit);
  }

  /**
   * A typed fraction or decimal number; infinite or not a number where it is neither.
   *
   * @param above numerator of a fraction, or null
   * @param digits a decimal number, with a point or a comma
   */
  static double number(@Nullable String above, String below, String digits) {
    if (above != null) {
      return Double.parseDouble(above) / Double.parseDouble(below);
    }
    String decimal = digits.replace(',', '.');
    return decimal.isEmpty() || decimal.equals(".") ? Double.NaN : Double.parseDouble(decimal);
  }

  /** An exception for {@code text} that says what may be typed. */
  static NotUnderstoodException no(String text, String what, String examples) {
    return new NotUnderstoodException(
        "\"" + Printable.of(text) + "\" is not " + what + "; type for example " + examples);
  }
}
