package quarterturn.procedure.check.rule.turn;

import java.util.ArrayList;
import java.util.List;
import quarterturn.procedure.Step;
import quarterturn.procedure.check.rule.Findings;
import quarterturn.procedure.check.rule.Proof;
import quarterturn.procedure.check.rule.Rule;

/** The rule that a turn's hazards are shown before it. */
public final class TurnHazards {
  public static final Rule RULE =
      Rule.ofSteps(
          "turn-hazards",
          "A turn names the hazards that the limits put before every turn.",
          TurnHazards::prove);

  private TurnHazards() {}

  private static void prove(Proof proof, Step step, Findings found) {
    List<String> missing = new ArrayList<>(proof.limits().turnHazards());
    missing.removeAll(step.words().hazards());
    if (step instanceof Step.TurnRod && !missing.isEmpty()) {
      found.add(
          step,
          "the turn " + step.id() + " does not show its hazards " + String.join(", ", missing),
          "name them under its hazards");
    }
  }
}
