package quarterturn.unit;

/**
 * A string's mass per length, in grams per metre, above zero. {@link #parse} takes {@code 23.5},
 * {@code 23.5 g/m}, {@code 0.0235 kg/m} and {@code 0.0013 lb/in}.
 */
public record UnitWeight(double gramsPerMetre) {
  private static final double GRAMS_PER_METRE_OF_POUND_PER_INCH = 453.59237 / 0.0254;

  public UnitWeight {
    if (!(gramsPerMetre > 0) || Double.isInfinite(gramsPerMetre)) {
      throw new NotUnderstoodException("a unit weight must be above zero");
    }
  }

  /**
   * Reads a typed unit weight.
   *
   * @throws NotUnderstoodException with the spellings that are understood
   */
  public static UnitWeight parse(String typed) {
    Typed read = Typed.read(typed);
    return switch (read.unit().replace(" ", "")) {
      case "", "g/m" -> new UnitWeight(read.number());
      case "kg/m" -> new UnitWeight(read.number() * 1000);
      case "lb/in" -> new UnitWeight(read.number() * GRAMS_PER_METRE_OF_POUND_PER_INCH);
      default -> throw Typed.no(typed, "a unit weight", "23.5, 23.5 g/m or 0.0013 lb/in");
    };
  }

  public double kgPerMetre() {
    return gramsPerMetre / 1000;
  }

  @Override
  public String toString() {
    return Decimals.plain(gramsPerMetre) + " g/m";
  }
}
