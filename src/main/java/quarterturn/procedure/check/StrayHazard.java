package quarterturn.procedure.check;

import quarterturn.procedure.Hazard;
import quarterturn.procedure.Step;

/** No hazard stands where it does not belong. */
final class StrayHazard {
  static final Rule RULE =
      new Rule(
          "stray-hazard",
          "A hazard is shown with the step it belongs to, not before or after it.",
          StrayHazard::prove);

  private StrayHazard() {}

  private static void prove(Proof proof, Findings found) {
    for (Step step : proof.steps().values()) {
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
}
