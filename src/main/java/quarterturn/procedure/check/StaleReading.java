package quarterturn.procedure.check;

import quarterturn.procedure.Quantity;
import quarterturn.procedure.Step;
import quarterturn.procedure.bench.Held;

/** No reading is used that something has spoiled. */
final class StaleReading implements Proving {
  @Override
  public String id() {
    return "stale-reading";
  }

  @Override
  public String means() {
    return "Nothing rests on a reading that something done since has spoiled.";
  }

  @Override
  public void prove(Proof proof, Findings found) {
    for (Step step : proof.steps().values()) {
      for (Quantity quantity : Uses.decided(step)) {
        proof.paths().at(step.id()).stream()
            .filter(node -> stale(node.at().held(quantity)))
            .findFirst()
            .ifPresent(
                node ->
                    found.add(
                        this,
                        step.mark(),
                        step.id() + " decides on " + quantity.word() + ", which is stale by then",
                        "take it again first; procedures/results.yaml says what spoils it",
                        proof.paths().way(node)));
      }
    }
  }

  private static boolean stale(Held held) {
    return held == Held.STALE || held == Held.AFTER_TURN;
  }

  @Override
  public Example bad() {
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
              go: off
        - tell: off
          text: Take the neck off.
          hazards: [neck-joint]
          establishes: [neck-loose]
          go: back
        - tell: back
          text: Screw the neck back on.
          hazards: [neck-joint]
          establishes: [neck-fast]
          changes: neck-refit
          go: judge
        - compute: judge
          calculation: comparison
          branches:
            - when: relief touches
              go: bowed-back
            - when: relief below target or in target or undecided or above target
              go: fine
        - done: bowed-back
          text: The string touches.
          outcome: touches
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
              go: judge
        - compute: judge
          calculation: comparison
          branches:
            - when: relief touches
              go: bowed-back
            - when: relief below target or in target or undecided or above target
              go: fine
        - done: bowed-back
          text: The string touches.
          outcome: touches
        - done: fine
          text: It was looked at.
          outcome: looked
        """);
  }
}
