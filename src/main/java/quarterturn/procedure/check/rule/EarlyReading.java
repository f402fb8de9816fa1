package quarterturn.procedure.check.rule;

import java.util.Set;
import quarterturn.procedure.Step;
import quarterturn.procedure.bench.Freshness;
import quarterturn.procedure.check.walk.Uses;
import quarterturn.procedure.kind.Quantity;

/** The rule that no reading is used before it was asked for. */
public final class EarlyReading {
  public static final Rule RULE =
      Rule.ofSteps(
          "early-reading",
          "A reading is asked for before anything rests on it.",
          EarlyReading::prove);

  private EarlyReading() {}

  private static void prove(Proof proof, Step step, Findings found) {
    Set<Quantity> used = step instanceof Step.TurnRod ? Set.of() : Uses.of(step);
    for (Quantity quantity : used) {
      String wrong = " rests on " + quantity.word() + ", which nobody was asked for yet";
      proof
          .nearest(step, at -> at.held(quantity) == Freshness.NEVER)
          .ifPresent(
              node ->
                  found.add(node, step.id() + wrong, "measure it before, or name it under needs"));
    }
  }
}
