package quarterturn.craft;

import quarterturn.unit.Length;

/**
 * How wood's width follows its moisture: {@code change = width C (M2 - M1)} between 6 and 14
 * percent of moisture (Wood Handbook, Table 13-5).
 *
 * @param radial C across the growth rings, for each percent of moisture
 * @param tangential C along the growth rings
 */
public record Shrinkage(double radial, double tangential) {
  /** Sugar maple, the usual wood of necks. */
  public static final Shrinkage SUGAR_MAPLE = new Shrinkage(0.00165, 0.00353);

  /** The change of a width, in millimetres, for a change of moisture in points. */
  public double radialMm(Length width, double points) {
    return width.mm() * radial * points;
  }

  /** The change of a width, in millimetres, for a change of moisture in points. */
  public double tangentialMm(Length width, double points) {
    return width.mm() * tangential * points;
  }
}
