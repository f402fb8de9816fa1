package quarterturn.procedure.check;

import quarterturn.procedure.Hazard;
import quarterturn.procedure.Step;

/** A hazard stands right before its step. */
final class MissingHazard implements Proving {
  @Override
  public String id() {
    return "missing-hazard";
  }

  @Override
  public String means() {
    return "A step shows each hazard that goes with what it does or says.";
  }

  @Override
  public void prove(Proof proof, Findings found) {
    for (Step step : proof.steps().values()) {
      Dangers dangers = new Dangers(step);
      for (Hazard hazard : proof.library().hazards().values()) {
        String why = dangers.of(hazard);
        boolean shown = step.words().hazards().contains(hazard.id());
        boolean turning =
            step instanceof Step.TurnRod && proof.limits().turnHazards().contains(hazard.id());
        if (why != null && !shown && !turning) {
          found.add(
              this,
              step.mark(),
              step.id() + " does not show the hazard " + hazard.id() + ", which goes with " + why,
              "add it to the hazards of this very step: hazards: [" + hazard.id() + "]");
        }
      }
    }
  }

  @Override
  public Example bad() {
    return Example.steps(
        """
        - tell: tune
          text: Tune every string to its pitch.
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
