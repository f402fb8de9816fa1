package quarterturn.rehearsal.fleet;

import quarterturn.rehearsal.simulated.Feelers;
import quarterturn.rehearsal.simulated.NeckTraits;

/** What a fleet's necks and readings may have in common that the advice does not know. */
public enum Condition {
  USUAL("as expected", 1, 1, 1, Feelers.USUAL),
  TWICE("twice the answer", 2, 1, 1, Feelers.USUAL),
  HALF("half the answer", 0.5, 1, 1, Feelers.USUAL),
  NOISY("twice the error", 1, 1, 2, Feelers.USUAL),
  COARSE("leaves of 0.1 mm", 1, 1, 1, new Feelers(0.1, 1)),
  /** Slack is drawn up to 0.08 turn as a rule, here up to 0.15. */
  SLACK("slack to 0.15 turn", 1, 0.15 / 0.08, 1, Feelers.USUAL);

  private final String words;
  private final double response;
  private final double slack;
  private final double noise;
  private final Feelers feelers;

  Condition(String words, double response, double slack, double noise, Feelers feelers) {
    this.words = words;
    this.response = response;
    this.slack = slack;
    this.noise = noise;
    this.feelers = feelers;
  }

  /** Its word in a fleet's JSON, which stays. */
  public String words() {
    return words;
  }

  /** Its words in what is printed. */
  public String shown() {
    return this == COARSE ? "gauges of 0.1 mm" : words;
  }

  /** A neck as drawn, under this condition. */
  NeckTraits of(NeckTraits drawn) {
    return new NeckTraits(
        drawn.reliefMm(),
        response * drawn.mmPerQuarter(),
        slack * drawn.slackTurns(),
        drawn.creep(),
        drawn.pullMm(),
        drawn.driftMm(),
        noise * drawn.noiseMm(),
        drawn.edgesMm(),
        feelers,
        drawn.fault());
  }
}
