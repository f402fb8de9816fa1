package quarterturn.procedure.check;

import quarterturn.procedure.bench.Freshness;
import quarterturn.procedure.check.walk.Turning;

/** A turn rests on a fresh reading. */
final class TurnReading {
  static final Rule RULE =
      new Rule(
          "turn-reading",
          "Before a turn relief was read on the lowest string, at pitch and settled, and nothing changed since.",
          TurnReading::prove);

  private TurnReading() {}

  private static void prove(Proof proof, Findings found) {
    for (Turning turning : proof.turns()) {
      if (turning.relief() != Freshness.FRESH && turning.relief() != Freshness.AFTER_TURN) {
        found.add(
            turning.node(),
            turning + " can come without a fresh reading",
            "let the strings be tuned, the neck settle and its relief be read on this way");
      }
    }
  }
}
