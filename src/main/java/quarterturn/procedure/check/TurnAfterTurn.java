package quarterturn.procedure.check;

import quarterturn.procedure.bench.Freshness;
import quarterturn.procedure.check.walk.Turning;

/** Between two turns the neck is read. */
final class TurnAfterTurn {
  static final Rule RULE =
      new Rule(
          "turn-after-turn",
          "Between two turns the strings are retuned, the neck settles and its relief is read, on every way.",
          TurnAfterTurn::prove);

  private TurnAfterTurn() {}

  private static void prove(Proof proof, Findings found) {
    for (Turning turning : proof.turns()) {
      if (turning.relief() == Freshness.AFTER_TURN) {
        found.add(
            turning.node(),
            turning + " can follow a turn with no reading between",
            "let every feel lead to retuning, a wait and a reading before the next turn");
      }
    }
  }
}
