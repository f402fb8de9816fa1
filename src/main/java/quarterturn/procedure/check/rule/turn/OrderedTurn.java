package quarterturn.procedure.check.rule.turn;

import quarterturn.procedure.Step;
import quarterturn.procedure.check.rule.Findings;
import quarterturn.procedure.check.rule.Proof;
import quarterturn.procedure.check.rule.Rule;
import quarterturn.procedure.check.rule.Said;
import quarterturn.procedure.check.words.Act;

/** The rule that only a turn step orders a turn of the rod. */
public final class OrderedTurn {
  public static final Rule RULE =
      Rule.ofSteps(
          "ordered-turn",
          "Only a turn step orders a turn of the rod; no other step's words do.",
          OrderedTurn::prove);

  private OrderedTurn() {}

  private static void prove(Proof proof, Step step, Findings found) {
    if (step instanceof Step.TurnRod) {
      return;
    }
    for (Said said : proof.said(step)) {
      if (said.order().act() == Act.TURN_ROD) {
        found.add(
            step,
            step.id() + " orders a turn of the rod: " + said.quoted(),
            "give it a turn step (turn: rod, as advised), or say it as an explanation");
      }
    }
  }
}
