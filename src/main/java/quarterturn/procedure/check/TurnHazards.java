package quarterturn.procedure.check;

import java.util.ArrayList;
import java.util.List;
import quarterturn.procedure.Step;

/** Before a turn its hazards are shown. */
final class TurnHazards {
  static final Rule RULE =
      new Rule(
          "turn-hazards",
          "A turn names the hazards that the limits put before every turn.",
          TurnHazards::prove);

  private TurnHazards() {}

  private static void prove(Proof proof, Findings found) {
    for (Step step : proof.steps().values()) {
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
}
