package quarterturn.craft;

import quarterturn.unit.Length;

/**
 * How wood's width follows its moisture: {@code change = width C (M2 - M1)} between 6 and 14
 * percent of moisture (Wood Handbook, Tables 4-3 and 13-5).
 *
 * @param radialPercent from green to oven-dry, across the growth rings
 * @param tangentialPercent from green to oven-dry, along them
 * @param radial C across the rings, for each percent of moisture
 * @param tangential C along the rings
 */
public record Shrinkage(
    double radialPercent, double tangentialPercent, double radial, double tangential) {
  /** Sugar maple, the usual wood of necks. */
  public static final Shrinkage SUGAR_MAPLE = new Shrinkage(4.8, 9.9, 0.00165, 0.00353);

  /** Indian rosewood, a usual wood of fingerboards. */
  public static final Shrinkage INDIAN_ROSEWOOD = ofGreenToDry(2.7, 5.8);

  /**
   * A wood whose coefficients are not listed. The Wood Handbook's other formula, {@code change =
   * width (M2 - M1) / (3000 / S - 30 + M1)} from a fibre saturation of 30 percent, taken in the
   * middle of the range, M1 = 10; from memory. For sugar maple it gives the listed coefficients.
   *
   * @param radialPercent from green to oven-dry
   * @param tangentialPercent from green to oven-dry
   */
  public static Shrinkage ofGreenToDry(double radialPercent, double tangentialPercent) {
    return new Shrinkage(
        radialPercent, tangentialPercent, perPoint(radialPercent), perPoint(tangentialPercent));
  }

  private static double perPoint(double greenToDry) {
    return 1 / (3000 / greenToDry - 20);
  }

  /** From green to oven-dry by volume: the sum, since wood hardly shrinks along the grain. */
  public double volumetricPercent() {
    return radialPercent + tangentialPercent;
  }

  /** The change of a width, in millimetres, for a change of moisture in points. */
  public double radialMm(Length width, double points) {
    return width.mm() * radial * points;
  }

  /** The change of a width, in millimetres, for a change of moisture in points. */
  public double tangentialMm(Length width, double points) {
    return width.mm() * tangential * points;
  }
}
