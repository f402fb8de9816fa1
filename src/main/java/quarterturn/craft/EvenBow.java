package quarterturn.craft;

import quarterturn.unit.Bracket;
import quarterturn.unit.Length;

/**
 * What a bow that is even from nut to joint shows under a string held elsewhere: a fixed share of
 * the relief, since every gap of a {@link Neck} is proportional to its curvature. A part that shows
 * more, or nothing, is bent unlike the rest.
 */
public final class EvenBow {
  private EvenBow() {}

  /**
   * The gap read with {@code part} for each millimetre of relief read with {@code whole}.
   *
   * @param joint the fret where the neck meets the body
   */
  public static double share(Scale scale, int joint, Held whole, Held part) {
    return Neck.uniform(scale, joint, Length.mm(1), whole).relief(part).mm();
  }

  /**
   * The readings of a part that fit an even bow: its share of the relief, and one gauge more or
   * less. Where its lower end is 0, a string that touches still tells that there is no bow at all.
   *
   * @param relief the whole neck's, of which a share is taken of each end that is known
   * @param gaugeMm step of the gauges
   */
  public static Window window(double share, Bracket relief, double gaugeMm) {
    double least = relief.noGap() ? 0 : relief.lowMm();
    double most = relief.beyondGauge() ? relief.lowMm() : relief.highMm();
    return new Window(Math.max(0, share * least - gaugeMm), share * Math.max(0, most) + gaugeMm);
  }
}
