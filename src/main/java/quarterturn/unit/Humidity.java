package quarterturn.unit;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Relative humidity in percent, 0 to 100. */
public record Humidity(double percent) {
  private static final Pattern TYPED =
      Pattern.compile("(\\d{1,3}(?:[.,]\\d{0,4})?|[.,]\\d{1,4})\\s*(%?\\s*(?:rh)?)");

  public Humidity {
    if (!(percent >= 0 && percent <= 100)) {
      throw new NotUnderstoodException("relative humidity lies between 0 and 100 %");
    }
  }

  /**
   * Reads {@code 48}, {@code 48 %}, {@code 48 rh} or {@code 48 %RH}. A bare number below one is
   * refused, since it may be a share: 0.45 for 45 %.
   *
   * @throws NotUnderstoodException with the spellings that are understood
   */
  public static Humidity parse(String typed) {
    Matcher m = TYPED.matcher(Digits.unended(Digits.plain(typed)));
    if (!m.matches()) {
      throw Typed.no(typed, "a humidity", "48 or 48 %");
    }
    double number = Double.parseDouble(m.group(1).replace(',', '.'));
    if (number > 0 && number < 1 && m.group(2).isEmpty()) {
      throw new NotUnderstoodException(
          "%s can be read as %s %% or as %s %%"
              .formatted(m.group(1), Decimals.plain(100 * number), m.group(1)),
          "type %s %%, or %s %% if the air is as dry as that"
              .formatted(Decimals.plain(100 * number), m.group(1)));
    }
    return new Humidity(number);
  }

  /** The humidity to the whole percent, which is what a room hygrometer can measure. */
  @Override
  public String toString() {
    return Decimals.print(percent, 0) + " %";
  }
}
