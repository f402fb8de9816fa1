package quarterturn.procedure.check;

import quarterturn.procedure.Fact;
import quarterturn.procedure.check.walk.Turning;

/** Before a turn its ground is laid. */
final class TurnNeeds {
  static final Rule RULE =
      new Rule(
          "turn-needs",
          "Before a turn the rod is identified and its key fits, on every way.",
          TurnNeeds::prove);

  private TurnNeeds() {}

  private static void prove(Proof proof, Findings found) {
    for (Turning turning : proof.turns()) {
      for (Fact need : turning.missing(proof.limits().turnNeeds())) {
        found.add(
            turning.node(),
            turning + " can come before " + need.meaning(),
            "let a step that establishes " + need.word() + " come first on this way");
      }
    }
  }
}
