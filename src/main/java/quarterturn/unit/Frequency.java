package quarterturn.unit;

/** A frequency in hertz, above zero. {@link #parse} takes {@code 41.2} and {@code 41.2 Hz}. */
public record Frequency(double hertz) {
  public Frequency {
    if (!(hertz > 0) || Double.isInfinite(hertz)) {
      throw new NotUnderstoodException("a frequency must be above zero");
    }
  }

  /**
   * Reads a typed frequency.
   *
   * @throws NotUnderstoodException with the spellings that are understood
   */
  public static Frequency parse(String typed) {
    Typed read = Typed.read(typed);
    if (!(read.unit().isEmpty() || read.unit().equals("hz"))) {
      throw Typed.no(typed, "a frequency", "41.2 or 41.2 Hz");
    }
    return new Frequency(read.number());
  }

  @Override
  public String toString() {
    return Decimals.plain(hertz) + " Hz";
  }
}
