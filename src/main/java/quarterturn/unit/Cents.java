package quarterturn.unit;

import java.util.Set;

/**
 * A pitch interval in hundredths of an equal-tempered semitone, plus for sharp. {@link #parse}
 * takes {@code +6}, {@code -2.5 cents} and {@code 3c}.
 */
public record Cents(double cents) {
  private static final double PER_OCTAVE = 1200;
  private static final Set<String> UNITS = Set.of("", "c", "ct", "cent", "cents");

  public Cents {
    if (!Double.isFinite(cents)) {
      throw new IllegalArgumentException("an interval must be a finite number of cents");
    }
  }

  /**
   * The interval between two frequencies of this ratio: {@code 1200 log2(ratio)}.
   *
   * @param ratio above zero
   */
  public static Cents ofRatio(double ratio) {
    if (!(ratio > 0) || Double.isInfinite(ratio)) {
      throw new IllegalArgumentException("a ratio of frequencies must be above zero");
    }
    return new Cents(PER_OCTAVE * Math.log(ratio) / Math.log(2));
  }

  /**
   * Reads a typed interval.
   *
   * @throws NotUnderstoodException with the spellings that are understood
   */
  public static Cents parse(String typed) {
    Typed read = Typed.read(typed);
    if (!UNITS.contains(read.unit())) {
      throw Typed.no(typed, "an interval", "+6, -2.5 or 3 cents");
    }
    return new Cents(read.number());
  }

  /** The ratio of the two frequencies: {@code 2^(cents/1200)}. */
  public double ratio() {
    return Math.pow(2, cents / PER_OCTAVE);
  }

  @Override
  public String toString() {
    String digits = Decimals.plain(cents);
    String signed = cents > 0 && !digits.equals("0") ? "+" + digits : digits;
    return signed + (signed.equals("+1") || signed.equals("-1") ? " cent" : " cents");
  }
}
