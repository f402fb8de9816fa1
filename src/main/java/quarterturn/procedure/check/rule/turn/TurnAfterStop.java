package quarterturn.procedure.check.rule.turn;

import java.util.stream.Collectors;
import quarterturn.procedure.Step;
import quarterturn.procedure.check.rule.Findings;
import quarterturn.procedure.check.rule.Proof;
import quarterturn.procedure.check.rule.Rule;
import quarterturn.procedure.check.walk.AbstractState;

/** The rule that the rod is not turned any more once its nut jammed, creaked or slipped. */
public final class TurnAfterStop {
  public static final Rule RULE =
      Rule.ofSteps(
          "turn-after-stop",
          "A nut that jams, creaks or slips leads to an end, and no other turn comes before it.",
          TurnAfterStop::prove);

  private TurnAfterStop() {}

  private static void prove(Proof proof, Step step, Findings found) {
    if (proof.turns(step)) {
      String feels =
          proof.limits().stopFeels().stream()
              .sorted()
              .map(feel -> feel.word())
              .collect(Collectors.joining(", "));
      proof
          .nearest(step, AbstractState::stopped)
          .ifPresent(
              node ->
                  found.add(
                      node,
                      step.id() + " turns the rod after its nut felt like one of " + feels,
                      "let each of these feels lead to a hand-over"));
    }
  }
}
