package quarterturn.procedure.check.rule;

import java.util.Set;
import java.util.stream.Stream;
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
      boolean parted = call.exits().stream().map(Step.Exit::to).distinct().count() > 1;
      boolean asked =
          parted
              ? asked(proof.steps().values().stream(), call).findAny().isPresent()
              : asked(Stream.of(call), call)
                  .flatMap(chosen -> chosen.options().stream())
                  .toList()
                  .containsAll(outcomes);
      if (outcomes.size() > 1 && !asked) {
        found.add(
            step,
            "nothing asks how " + call.procedure() + " ended at " + step.id(),
            "branch by " + step.id() + " is ...; it ends as " + String.join(", ", outcomes));
      }
    }
  }

  /** What branches of some steps ask of how a call ended. */
  private static Stream<Condition.Chosen> asked(Stream<? extends Step> steps, Step.Call call) {
    return steps
        .flatMap(one -> one.fork().branches().stream())
        .flatMap(branch -> branch.when().atoms())
        .filter(Condition.Chosen.class::isInstance)
        .map(Condition.Chosen.class::cast)
        .filter(chosen -> chosen.step().equals(call.id()));
  }
}
