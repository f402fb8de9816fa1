package quarterturn.unit;

/**
 * A temperature in degrees Celsius. {@link #parse} takes {@code 21}, {@code 21 C}, {@code 21 °C}
 * and {@code 70 F}.
 */
public record Temperature(double celsius) {
  private static final double ABSOLUTE_ZERO = -273.15;

  public Temperature {
    if (!(celsius > ABSOLUTE_ZERO) || Double.isInfinite(celsius)) {
      throw new NotUnderstoodException("a temperature must be above absolute zero, -273.15 C");
    }
  }

  /** A temperature from degrees Fahrenheit. */
  public static Temperature fahrenheit(double fahrenheit) {
    return new Temperature((fahrenheit - 32) / 1.8);
  }

  /**
   * Reads a typed temperature.
   *
   * @throws NotUnderstoodException with the spellings that are understood
   */
  public static Temperature parse(String typed) {
    Typed read = Typed.read(typed);
    return switch (read.unit().replace("°", "").strip()) {
      case "", "c" -> new Temperature(read.number());
      case "f" -> fahrenheit(read.number());
      default -> throw Typed.no(typed, "a temperature", "21, 21 C or 70 F");
    };
  }

  @Override
  public String toString() {
    return Decimals.plain(celsius) + " C";
  }
}
