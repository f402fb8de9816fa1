package quarterturn.procedure.check.rule;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import quarterturn.procedure.Step;
import quarterturn.procedure.check.walk.Frame;
import quarterturn.procedure.condition.Condition;

/** The rule that a branch on a call names only outcomes the called procedure has. */
public final class UnknownOutcome {
  public static final Rule RULE =
      Rule.ofSteps(
          "unknown-outcome",
          "A branch on a call names outcomes that the called procedure has.",
          UnknownOutcome::prove);

  private UnknownOutcome() {}

  private static void prove(Proof proof, Step step, Findings found) {
    for (Condition condition : Frame.conditions(step)) {
      unknown(proof, condition)
          .forEach(
              (call, outcomes) ->
                  found.add(
                      step,
                      call.procedure() + " never ends as " + String.join(", ", outcomes),
                      "Allowed: " + String.join(", ", proof.paths().frame().outcomes(call))));
    }
  }

  /** The outcomes a condition names that no called procedure has, by the step that calls it. */
  static Map<Step.Call, Set<String>> unknown(Proof proof, Condition condition) {
    Map<Step.Call, Set<String>> all = new LinkedHashMap<>();
    for (Condition.Atom atom : condition.atoms().toList()) {
      if (atom instanceof Condition.Chosen chosen
          && proof.steps().get(chosen.step()) instanceof Step.Call call) {
        Set<String> unknown = new LinkedHashSet<>(chosen.options());
        unknown.removeAll(proof.paths().frame().outcomes(call));
        if (!unknown.isEmpty()) {
          all.computeIfAbsent(call, c -> new LinkedHashSet<>()).addAll(unknown);
        }
      }
    }
    return all;
  }
}
