package quarterturn.procedure.check;

import quarterturn.procedure.Hazard;
import quarterturn.procedure.Step;

/** No hazard stands where it does not belong. */
final class StrayHazard implements Proving {
  @Override
  public String id() {
    return "stray-hazard";
  }

  @Override
  public String means() {
    return "A hazard is shown with the step it belongs to, not before or after it.";
  }

  @Override
  public void prove(Proof proof, Findings found) {
    for (Step step : proof.steps().values()) {
      for (String id : step.words().hazards()) {
        Hazard hazard = proof.library().hazards().get(id);
        if (hazard != null && hazard.bound() && new Dangers(step).of(hazard) == null) {
          found.add(
              this,
              step.mark(),
              "the hazard " + id + " does not belong to " + step.id(),
              "move it to the step it belongs to; it goes with " + Dangers.occasions(hazard));
        }
      }
    }
  }

  @Override
  public Example bad() {
    return Example.steps(
        """
        - tell: ready
          text: Put on eye protection.
          hazards: [string-whip]
          go: tune
        - tell: tune
          text: Tune every string to its pitch.
          hazards: [string-whip]
          establishes: [at-pitch]
          go: fine
        - done: fine
          text: The strings are at pitch.
          outcome: tuned
        """);
  }

  @Override
  public Example good() {
    return Example.steps(
        """
        - tell: ready
          text: Put on eye protection.
          go: tune
        - tell: tune
          text: Tune every string to its pitch.
          hazards: [string-whip]
          establishes: [at-pitch]
          go: fine
        - done: fine
          text: The strings are at pitch.
          outcome: tuned
        """);
  }
}
