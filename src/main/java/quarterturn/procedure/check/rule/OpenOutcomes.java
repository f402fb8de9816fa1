package quarterturn.procedure.check.rule;

import java.util.Set;
import quarterturn.procedure.Step;
import quarterturn.procedure.condition.Condition;

/** The rule that a caller takes care of how a called procedure ended. */
public final class OpenOutcomes {
  public static final Rule RULE =
      Rule.ofSteps(
          "open-outcomes",
          "Whoever calls a procedure that can end in several ways asks how it ended.",
          OpenOutcomes::prove);

  private OpenOutcomes() {}

  private static void prove(Proof proof, Step step, Findings found) {
    if (step instanceof Step.Call call) {
      Set<String> outcomes = proof.paths().frame().outcomes(call);
      boolean asked =
          proof.steps().values().stream()
              .flatMap(one -> one.fork().branches().stream())
              .flatMap(branch -> branch.when().atoms())
              .anyMatch(atom -> atom instanceof Condition.Chosen c && c.step().equals(step.id()));
      if (outcomes.size() > 1 && !asked) {
        found.add(
            step,
            "nothing asks how " + call.procedure() + " ended at " + step.id(),
            "branch by " + step.id() + " is ...; it ends as " + String.join(", ", outcomes));
      }
    }
  }
}
