package quarterturn.unit;

import java.util.Locale;

/** Relative humidity in percent, 0 to 100. */
public record Humidity(double percent) {
  public Humidity {
    if (!(percent >= 0 && percent <= 100)) {
      throw new NotUnderstoodException(
          "relative humidity lies between 0 and 100 %, not " + percent);
    }
  }

  /**
   * Reads {@code 48}, {@code 48 %}, {@code 48 rh} or {@code 48 %RH}.
   *
   * @throws NotUnderstoodException with the spellings that are understood
   */
  public static Humidity parse(String typed) {
    String number =
        typed
            .strip()
            .toLowerCase(Locale.ROOT)
            .replaceAll("\\s*(%|%?\\s*rh)$", "")
            .replace(',', '.');
    if (!number.matches("\\d{1,3}(\\.\\d{0,4})?")) {
      throw Typed.no(typed, "a humidity", "48 or 48 %");
    }
    return new Humidity(Double.parseDouble(number));
  }

  /** The humidity to the whole percent, which is what a room hygrometer can measure. */
  @Override
  public String toString() {
    return Decimals.print(percent, 0) + " %";
  }
}
