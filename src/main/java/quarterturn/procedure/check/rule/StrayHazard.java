package quarterturn.procedure.check.rule;

import quarterturn.procedure.Hazard;
import quarterturn.procedure.Step;

/** The rule that no hazard stands where it does not belong. */
public final class StrayHazard {
  public static final Rule RULE =
      Rule.ofSteps(
          "stray-hazard",
          "A hazard is shown with the step it belongs to, not before or after it.",
          StrayHazard::prove);

  private StrayHazard() {}

  private static void prove(Proof proof, Step step, Findings found) {
    for (String id : step.words().hazards()) {
      Hazard hazard = proof.library().hazards().get(id);
      if (hazard != null && hazard.bound() && new Dangers(step).of(hazard) == null) {
        found.add(
            step,
            "the hazard " + id + " does not belong to " + step.id(),
            "move it to the step it belongs to; it goes with " + Dangers.occasions(hazard));
      }
    }
  }
}
