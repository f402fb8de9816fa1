package quarterturn.craft;

import quarterturn.unit.Humidity;
import quarterturn.unit.NotUnderstoodException;
import quarterturn.unit.Temperature;

/**
 * The moisture content that wood comes to in still air.
 *
 * <p>USDA Forest Products Laboratory, Wood Handbook (FPL-GTR-282, 2021), equation 4-5, temperature
 * in degrees Celsius, relative humidity h as a fraction:
 *
 * <pre>
 * M = 1800 / W * [ K h / (1 - K h) + (K1 K h + 2 K1 K2 K^2 h^2) / (1 + K1 K h + K1 K2 K^2 h^2) ]
 * </pre>
 *
 * <p>M in percent of dry mass. It stands for wood in general, from old data on spruce; species
 * differ by about one point, and a finished neck takes weeks to come near it.
 */
public final class WoodMoisture {
  /**
   * Highest temperature of the handbook's data, in degrees Celsius; the equation is smooth above
   * it.
   */
  private static final double HOTTEST = 100;

  private static final double COLDEST = -40;

  private WoodMoisture() {}

  /** Equilibrium moisture content in percent. */
  public static double percent(Temperature temperature, Humidity humidity) {
    double t = temperature.celsius();
    if (!(t >= COLDEST && t <= HOTTEST)) {
      throw new NotUnderstoodException("wood moisture is known between -40 and 100 C");
    }
    double w = 349 + 1.29 * t + 0.0135 * t * t;
    double k = 0.805 + 0.000736 * t - 0.00000273 * t * t;
    double k1 = 6.27 - 0.00938 * t - 0.000303 * t * t;
    double k2 = 1.91 + 0.0407 * t - 0.000293 * t * t;
    double kh = k * humidity.percent() / 100;
    double second = k1 * kh + k1 * k2 * kh * kh;
    return 1800 / w * (kh / (1 - kh) + (second + k1 * k2 * kh * kh) / (1 + second));
  }
}
