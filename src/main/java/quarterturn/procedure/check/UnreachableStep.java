package quarterturn.procedure.check;

import java.util.Set;
import quarterturn.procedure.Step;

/** Every step is there for something. */
final class UnreachableStep {
  static final Rule RULE =
      new Rule("unreachable-step", "Every step can be reached.", UnreachableStep::prove);

  private UnreachableStep() {}

  private static void prove(Proof proof, Findings found) {
    Set<String> reached = proof.paths().reached();
    for (Step step : proof.steps().values()) {
      if (!reached.contains(step.id()) && proof.paths().whole()) {
        found.add(
            step, "nobody reaches the step " + step.id(), "let a step lead to it, or take it out");
      }
    }
  }
}
