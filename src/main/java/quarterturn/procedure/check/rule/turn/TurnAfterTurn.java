package quarterturn.procedure.check.rule.turn;

import quarterturn.procedure.bench.Freshness;
import quarterturn.procedure.check.rule.Findings;
import quarterturn.procedure.check.rule.Proof;
import quarterturn.procedure.check.rule.Rule;

/** The rule that the neck is read between two turns. */
public final class TurnAfterTurn {
  public static final Rule RULE =
      Turning.rule(
          "turn-after-turn",
          "Between two turns the strings are retuned, the neck settles and its relief is read, on every way.",
          TurnAfterTurn::prove);

  private TurnAfterTurn() {}

  private static void prove(Proof proof, Turning turning, Findings found) {
    if (turning.relief() == Freshness.AFTER_TURN) {
      found.add(
          turning.node(),
          turning + " can follow a turn with no reading between",
          "let every feel lead to retuning, a wait and a reading before the next turn");
    }
  }
}
