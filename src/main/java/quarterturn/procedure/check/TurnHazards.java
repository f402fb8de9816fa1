package quarterturn.procedure.check;

import java.util.ArrayList;
import java.util.List;
import quarterturn.procedure.Step;

/** Before a turn its hazards are shown. */
final class TurnHazards implements Proving {
  @Override
  public String id() {
    return "turn-hazards";
  }

  @Override
  public String means() {
    return "A turn names the hazards that the limits put before every turn.";
  }

  @Override
  public void prove(Proof proof, Findings found) {
    for (Step step : proof.steps().values()) {
      List<String> missing = new ArrayList<>(proof.limits().turnHazards());
      missing.removeAll(step.words().hazards());
      if (step instanceof Step.TurnRod && !missing.isEmpty()) {
        found.add(
            this,
            step.mark(),
            "the turn " + step.id() + " does not show its hazards " + String.join(", ", missing),
            "name them under its hazards");
      }
    }
  }

  @Override
  public Example bad() {
    return Example.sound(
        """
        - turn: turn
          text: Now {way} the rod nut by {turn}.
          hazards: [tool-slip, rod-force, wrong-key]
          amount: advised
          limit: 1/4 turn
        """,
        """
        - turn: turn
          text: Now {way} the rod nut by {turn}.
          hazards: [tool-slip]
          amount: advised
          limit: 1/4 turn
        """);
  }

  @Override
  public Example good() {
    return Example.sound(
        """
        - turn: turn
          text: Now {way} the rod nut by {turn}.
          hazards: [tool-slip, rod-force, wrong-key]
          amount: advised
          limit: 1/4 turn
        """);
  }
}
