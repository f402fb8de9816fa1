package quarterturn.procedure.check.rule;

import java.util.Set;
import quarterturn.procedure.Step;
import quarterturn.procedure.bench.Freshness;
import quarterturn.procedure.check.walk.Uses;
import quarterturn.procedure.kind.Quantity;

/** The rule that no reading is used that something has spoiled. */
public final class StaleReading {
  private static final Set<Freshness> STALE = Set.of(Freshness.STALE, Freshness.AFTER_TURN);

  public static final Rule RULE =
      Rule.ofSteps(
          "stale-reading",
          "Nothing rests on a reading that something done since has spoiled.",
          StaleReading::prove);

  private StaleReading() {}

  private static void prove(Proof proof, Step step, Findings found) {
    Set<Quantity> used = step instanceof Step.TurnRod ? Uses.decided(step) : Uses.of(step);
    for (Quantity quantity : used) {
      boolean decides = Uses.decided(step).contains(quantity);
      String does = decides ? " decides on " : " tells of ";
      String wrong = does + quantity.word() + ", which is stale by then";
      String mend = "take it again first; procedures/results.yaml says what spoils it";
      proof
          .nearest(step, at -> STALE.contains(at.held(quantity)))
          .ifPresent(node -> found.add(node, step.id() + wrong, mend));
    }
  }
}
