package quarterturn.craft;

import quarterturn.unit.Cents;
import quarterturn.unit.Frequency;
import quarterturn.unit.NotUnderstoodException;

/**
 * How well any pitch meter can know a pitch: the Cramer-Rao bound for one steady tone in white
 * noise, {@code var(f) >= 12 fs^2 / ((2 pi)^2 eta N (N^2 - 1))} with {@code eta = A^2 / (2
 * sigma^2)} (textbook; IEEE Trans. Inf. Theory 20 (1974) 591, from memory).
 *
 * <p>It falls with the length of the tone to the power 1.5. Below about five periods it is off by
 * some per cent. A meter that works in steps of a spectrum does worse.
 */
public final class PitchBound {
  private PitchBound() {}

  /**
   * Least standard deviation of a pitch.
   *
   * @param rate samples a second
   * @param seconds of tone, two samples or more
   * @param decibels of tone over noise
   */
  public static double hertz(double rate, double seconds, double decibels) {
    double samples = Math.rint(rate * seconds);
    if (!(rate > 0 && samples >= 2)) {
      throw new NotUnderstoodException(
          "a pitch can't be told from less than two samples of a tone");
    }
    double eta = Math.pow(10, decibels / 10);
    return Math.sqrt(12 / (eta * samples * (samples * samples - 1))) * rate / (2 * Math.PI);
  }

  /** Least standard deviation of a pitch, in cents around it. */
  public static Cents cents(Frequency pitch, double rate, double seconds, double decibels) {
    return Cents.ofRatio(1 + hertz(rate, seconds, decibels) / pitch.hertz());
  }
}
