package quarterturn.rehearsal.simulated;

import quarterturn.craft.rod.Creep;

/**
 * The properties of a simulated neck as found.
 *
 * @param reliefMm relief at pitch, in millimetres; below zero is back bow
 * @param mmPerQuarter relief lost at once by tightening a quarter turn, in millimetres, above zero
 * @param slackTurns turns lost whenever the direction of turning changes
 * @param creep how the neck goes on moving after each turn
 * @param pullMm relief lost while the strings are slackened by a whole tone, in millimetres
 * @param driftMm standard deviation of what the climate adds in a day, in millimetres
 * @param noiseMm standard deviation of a reading, in millimetres
 * @param edgesMm relief under the highest string minus relief under the lowest, in millimetres
 * @param feelers the leaves it is read with
 * @param fault the fault of the neck or its rod
 */
public record NeckTraits(
    double reliefMm,
    double mmPerQuarter,
    double slackTurns,
    Creep creep,
    double pullMm,
    double driftMm,
    double noiseMm,
    double edgesMm,
    Feelers feelers,
    NeckFault fault) {
  /**
   * Relief lost when the strings are slackened by a whole tone, in millimetres; an estimate, from
   * memory, as are the values below it.
   */
  private static final double PULL_MM = 0.1;

  private static final double DRIFT_MM = 0.01;
  private static final double NOISE_MM = 0.012;
  private static final double EDGES_MM = -0.02;
  private static final double TWIST_MM = 0.25;

  public NeckTraits {
    if (!(mmPerQuarter > 0 && slackTurns >= 0 && driftMm >= 0 && noiseMm >= 0)) {
      throw new IllegalArgumentException(
          "a neck needs a response above zero; slack, drift and noise are not below zero");
    }
  }

  /** A neck with the usual creep, pull, drift, noise and leaves. */
  public static NeckTraits of(
      double reliefMm, double mmPerQuarter, double slackTurns, NeckFault fault) {
    return new NeckTraits(
        reliefMm,
        mmPerQuarter,
        slackTurns,
        Creep.USUAL,
        PULL_MM,
        DRIFT_MM,
        NOISE_MM,
        fault == NeckFault.TWIST ? TWIST_MM : EDGES_MM,
        Feelers.USUAL,
        fault);
  }
}
