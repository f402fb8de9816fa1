package quarterturn.craft;

import quarterturn.unit.Force;
import quarterturn.unit.Frequency;
import quarterturn.unit.Length;
import quarterturn.unit.UnitWeight;

/**
 * The pull of a tuned string: {@code T = 4 mu L^2 f^2}, the first mode of an ideal string
 * (textbook).
 *
 * <p>L is the scale length in metres, f the open string's pitch, mu its mass per length in kg/m. It
 * leaves out stiffness, which lets a real string sound the same note at up to about a tenth of a
 * per cent less.
 */
public final class Tension {
  /**
   * Stress in MPa at which plain music wire breaks, roughly: a materials database gives about 2450
   * for ASTM A228; thinner wire holds more.
   */
  public static final double BREAKS_AT_MPA = 2450;

  private Tension() {}

  public static Force of(Scale scale, Frequency pitch, UnitWeight weight) {
    double metresPerSecond = 2 * scale.mm() / 1000 * pitch.hertz();
    return Force.newtons(weight.kgPerMetre() * metresPerSecond * metresPerSecond);
  }

  /** Stress in the steel that carries the pull, in MPa. */
  public static double stressMpa(Force tension, Length steel) {
    return tension.newtons() / StringGauge.area(steel) / 1e6;
  }
}
