package quarterturn.procedure.check.rule;

import quarterturn.procedure.Step;

/** The rule that every step can be reached. */
public final class UnreachableStep {
  public static final Rule RULE =
      Rule.ofSteps("unreachable-step", "Every step can be reached.", UnreachableStep::prove);

  private UnreachableStep() {}

  private static void prove(Proof proof, Step step, Findings found) {
    boolean reached = !proof.paths().at(step.id()).isEmpty();
    if (!reached && proof.paths().whole() && !proof.lent(step)) {
      found.add(
          step, "nobody reaches the step " + step.id(), "let a step lead to it, or take it out");
    }
  }
}
