package quarterturn.procedure.check;

import java.util.Set;
import quarterturn.procedure.Quantity;
import quarterturn.procedure.Step;
import quarterturn.procedure.bench.Held;

/** No reading is used before it was asked for. */
final class EarlyReading implements Proving {
  @Override
  public String id() {
    return "early-reading";
  }

  @Override
  public String means() {
    return "A reading is asked for before anything rests on it.";
  }

  @Override
  public void prove(Proof proof, Findings found) {
    for (Step step : proof.steps().values()) {
      Set<Quantity> used = step instanceof Step.TurnRod ? Set.of() : Uses.of(step);
      for (Quantity quantity : used) {
        proof.paths().at(step.id()).stream()
            .filter(node -> node.at().held(quantity) == Held.NEVER)
            .findFirst()
            .ifPresent(
                node ->
                    found.add(
                        this,
                        step.mark(),
                        step.id()
                            + " rests on "
                            + quantity.word()
                            + ", which nobody was asked for yet",
                        "measure it before, or name it under needs",
                        proof.paths().way(node)));
      }
    }
  }

  @Override
  public Example bad() {
    return Example.steps(
        """
        - tell: say
          text: The relief is {reading}.
          go: tune
        - tell: tune
          text: Tune every string to its pitch.
          hazards: [string-whip]
          establishes: [at-pitch]
          go: settle
        - wait: settle
          text: Let the neck settle for {minutes}.
          for: 10 min
          establishes: [settled]
          go: read
        - measure: read
          text: Read the {lowest} string.
          quantity: relief
          string: lowest
          gauge: 0.05 mm
          plausible: 0..3 mm
          branches:
            - when: relief cannot be measured
              go: fine
            - when: relief was read
              go: fine
        - done: fine
          text: It was looked at.
          outcome: looked
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
          go: settle
        - wait: settle
          text: Let the neck settle for {minutes}.
          for: 10 min
          establishes: [settled]
          go: read
        - measure: read
          text: Read the {lowest} string.
          quantity: relief
          string: lowest
          gauge: 0.05 mm
          plausible: 0..3 mm
          branches:
            - when: relief cannot be measured
              go: fine
            - when: relief was read
              go: say
        - tell: say
          text: The relief is {reading}.
          go: fine
        - done: fine
          text: It was looked at.
          outcome: looked
        """);
  }
}
