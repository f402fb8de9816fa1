package quarterturn.procedure.check.rule.turn;

import quarterturn.procedure.Fact;
import quarterturn.procedure.check.rule.Findings;
import quarterturn.procedure.check.rule.Proof;
import quarterturn.procedure.check.rule.Rule;

/** The rule that the facts a turn needs are established before it. */
public final class TurnNeeds {
  public static final Rule RULE =
      Turning.rule(
          "turn-needs",
          "Before a turn the rod is identified and its key fits, on every way.",
          TurnNeeds::prove);

  private TurnNeeds() {}

  private static void prove(Proof proof, Turning turning, Findings found) {
    for (Fact need : turning.missing(proof.limits().turnNeeds())) {
      found.add(
          turning.node(),
          turning + " can come before " + need.meaning(),
          "let a step that establishes " + need.word() + " come first on this way");
    }
  }
}
