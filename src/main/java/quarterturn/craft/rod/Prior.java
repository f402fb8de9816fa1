package quarterturn.craft.rod;

import quarterturn.unit.Worded;

/**
 * What to expect of a rod before it was ever turned: millimetres of relief per quarter turn, a
 * lognormal distribution given by its median and the standard deviation of its logarithm.
 *
 * <p>Source: an estimate from beam theory with assumed inputs (no published response was found):
 * bass 0.22 mm, guitar 0.18 mm, sigma 0.5. Common practice, no source, puts a quarter turn at 0.05
 * to 0.25 mm.
 */
public enum Prior implements Worded {
  BASS(0.22),
  GUITAR(0.18);

  /** Standard deviation of the natural logarithm of the response. */
  public static final double SIGMA = 0.5;

  private final double mmPerQuarter;

  Prior(double mmPerQuarter) {
    this.mmPerQuarter = mmPerQuarter;
  }

  /** Median response in millimetres of relief per quarter turn. */
  public double mmPerQuarter() {
    return mmPerQuarter;
  }
}
