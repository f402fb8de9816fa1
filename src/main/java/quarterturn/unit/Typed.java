package quarterturn.unit;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * A number with its unit as a person types it: {@code 180N}, {@code 68 °F}, {@code -2,5 cents}. The
 * unit is what follows the number, in lower case, empty where there is none.
 */
record Typed(double number, String unit) {
  private static final Pattern TYPED =
      Pattern.compile("([-+]?(?:\\d{1,9}(?:[.,]\\d{0,9})?|[.,]\\d{1,9}))\\s*([^\\d\\s.,][^\\d]*)?");

  /** Reads {@code text}; its unit is one that nothing has where it is no number with a unit. */
  static Typed read(String text) {
    Matcher m = TYPED.matcher(text.strip().toLowerCase(Locale.ROOT));
    if (!m.matches()) {
      return new Typed(0, "?");
    }
    String unit = m.group(2) == null ? "" : m.group(2);
    return new Typed(Double.parseDouble(m.group(1).replace(',', '.')), unit);
  }

  /**
   * A part or a decimal number as typed; infinite or no number where it is neither.
   *
   * @param above of a fraction, or null where there is none
   * @param digits of a decimal number, with a point or a comma
   */
  static double number(@Nullable String above, String below, String digits) {
    if (above != null) {
      return Double.parseDouble(above) / Double.parseDouble(below);
    }
    String decimal = digits.replace(',', '.');
    return decimal.isEmpty() || decimal.equals(".") ? Double.NaN : Double.parseDouble(decimal);
  }

  /** Complains about {@code text}, saying what may be typed. */
  static NotUnderstoodException no(String text, String what, String examples) {
    return new NotUnderstoodException(
        "\"" + Printable.of(text) + "\" is not " + what + "; type for example " + examples);
  }
}
