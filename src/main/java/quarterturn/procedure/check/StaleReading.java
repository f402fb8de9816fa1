package quarterturn.procedure.check;

import java.util.Set;
import quarterturn.procedure.Quantity;
import quarterturn.procedure.Step;
import quarterturn.procedure.bench.Held;

/** No reading is used that something has spoiled. */
final class StaleReading {
  private static final Set<Held> STALE = Set.of(Held.STALE, Held.AFTER_TURN);

  private static final String JUDGE =
      """
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
      """;

  static final Rule RULE =
      new Rule(
          "stale-reading",
          "Nothing rests on a reading that something done since has spoiled.",
          StaleReading::prove,
          Example.steps(Pieces.relief("judge") + JUDGE + Pieces.LOOKED)
              .broken(
                  "      go: judge\n",
                  """
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
                  """));

  private StaleReading() {}

  private static void prove(Proof proof, Findings found) {
    for (Step step : proof.steps().values()) {
      for (Quantity quantity : Uses.decided(step)) {
        String wrong = " decides on " + quantity.word() + ", which is stale by then";
        String mend = "take it again first; procedures/results.yaml says what spoils it";
        proof
            .nearest(step, at -> STALE.contains(at.held(quantity)))
            .ifPresent(node -> found.add(node, step.id() + wrong, mend));
      }
    }
  }
}
