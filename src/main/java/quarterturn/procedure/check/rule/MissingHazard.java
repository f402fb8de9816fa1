package quarterturn.procedure.check.rule;

import quarterturn.procedure.Hazard;
import quarterturn.procedure.Step;

/** The rule that a hazard stands right before its step. */
public final class MissingHazard {
  public static final Rule RULE =
      Rule.ofSteps(
          "missing-hazard",
          "A step shows each hazard that goes with what it does or says.",
          MissingHazard::prove);

  private MissingHazard() {}

  private static void prove(Proof proof, Step step, Findings found) {
    Dangers dangers = new Dangers(step);
    for (Hazard hazard : proof.library().hazards().values()) {
      String why = dangers.of(hazard);
      boolean shown = step.words().hazards().contains(hazard.id());
      boolean turning =
          step instanceof Step.TurnRod && proof.limits().turnHazards().contains(hazard.id());
      if (why != null && !shown && !turning) {
        found.add(
            step,
            step.id() + " does not show the hazard " + hazard.id() + ", which goes with " + why,
            "add it to the hazards of this very step: hazards: [" + hazard.id() + "]");
      }
    }
  }
}
