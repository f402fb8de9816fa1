package quarterturn.procedure.check.rule.turn;

import quarterturn.procedure.bench.Freshness;
import quarterturn.procedure.check.rule.Findings;
import quarterturn.procedure.check.rule.Proof;
import quarterturn.procedure.check.rule.Rule;

/** The rule that a turn rests on a fresh reading. */
public final class TurnReading {
  public static final Rule RULE =
      Turning.rule(
          "turn-reading",
          "Before a turn relief was read on the lowest string, at pitch and settled, and nothing changed since.",
          TurnReading::prove);

  private TurnReading() {}

  private static void prove(Proof proof, Turning turning, Findings found) {
    if (turning.relief() != Freshness.FRESH && turning.relief() != Freshness.AFTER_TURN) {
      found.add(
          turning.node(),
          turning + " can come without a fresh reading",
          "let the strings be tuned, the neck settle and its relief be read on this way");
    }
  }
}
