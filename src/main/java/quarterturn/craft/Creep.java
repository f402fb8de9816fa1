package quarterturn.craft;

/**
 * How far a neck has crept a while after a change: {@code share = (t / 3 years)^n} of what it will
 * creep in three years, which about equals the change itself.
 *
 * <p>Wood Handbook, chapter 5: at a usual stress the extra deformation after several years may
 * about equal the first. The power law and n from 0.2 to 0.33 are from memory. There is no single
 * time after which it is over: read again after ten minutes, decide after a day, look again after a
 * week.
 *
 * @param n exponent, between 0 and 1
 */
public record Creep(double n) {
  /** Middle of the range. */
  public static final Creep USUAL = new Creep(0.25);

  /** Three years of 365 days; the law is far too rough for leap days to matter. */
  private static final double REFERENCE_HOURS = 3 * 365.0 * 24;

  public Creep {
    if (!(n > 0 && n < 1)) {
      throw new IllegalArgumentException("a creep exponent lies between 0 and 1");
    }
  }

  /** The share of the change at once that is added within {@code hours}. */
  public double share(double hours) {
    return Math.pow(Math.max(0, hours) / REFERENCE_HOURS, n);
  }
}
