package quarterturn.craft.rod;

/**
 * The law by which a neck creeps after a change: {@code share = (t / 3 years)^n} of what it will
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
  /** The middle of the exponent's range. */
  public static final Creep USUAL = new Creep(0.25);

  /** The law with the smallest exponent of the range. */
  private static final Creep QUICK = new Creep(0.2);

  private static final Creep SLOW = new Creep(0.33);

  /** Time in hours after which the ends of the range come nearer to each other again. */
  private static final double WIDEST_HOURS = 560;

  /** Hours in three years of 365 days; the law is far too rough for leap days to matter. */
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

  /**
   * How unsure the share is within {@code hours}: half of what lies between the ends of the range,
   * or of the most that lay between them before.
   */
  public static double doubt(double hours) {
    double within = Math.min(hours, WIDEST_HOURS);
    return (QUICK.share(within) - SLOW.share(within)) / 2;
  }
}
