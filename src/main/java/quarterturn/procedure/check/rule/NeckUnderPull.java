package quarterturn.procedure.check.rule;

import quarterturn.procedure.Fact;
import quarterturn.procedure.Step;

/** The rule that the strings are slack before the neck is unscrewed. */
public final class NeckUnderPull {
  public static final Rule RULE =
      Rule.ofSteps(
          "neck-under-pull",
          "Before the neck is loosened in its pocket the strings are slack, on every way.",
          NeckUnderPull::prove);

  private NeckUnderPull() {}

  private static void prove(Proof proof, Step step, Findings found) {
    boolean option =
        step instanceof Step.Choose choose
            && choose.options().stream()
                .anyMatch(one -> one.establishes().contains(Fact.NECK_LOOSE));
    if (option || step.establishes().contains(Fact.NECK_LOOSE)) {
      for (Fact need : proof.limits().apartNeeds()) {
        proof
            .nearest(step, at -> !at.has(need))
            .ifPresent(
                node ->
                    found.add(
                        node,
                        step.id() + " can loosen the neck before " + need.meaning(),
                        "let a step that establishes " + need.word() + " come first on this way"));
      }
    }
  }
}
