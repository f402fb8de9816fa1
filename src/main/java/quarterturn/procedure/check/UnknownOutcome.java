package quarterturn.procedure.check;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import quarterturn.procedure.Condition;
import quarterturn.procedure.Step;

/** A call can end as its branches say. */
final class UnknownOutcome implements Proving {
  @Override
  public String id() {
    return "unknown-outcome";
  }

  @Override
  public String means() {
    return "A branch on a call names outcomes that the called procedure has.";
  }

  @Override
  public void prove(Proof proof, Findings found) {
    for (Step step : proof.steps().values()) {
      for (Condition condition : Frame.conditions(step)) {
        unknown(proof, condition)
            .forEach(
                (call, outcomes) ->
                    found.add(
                        this,
                        step.mark(),
                        call.procedure() + " never ends as " + String.join(", ", outcomes),
                        "Allowed: " + String.join(", ", proof.paths().frame().outcomes(call))));
      }
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

  @Override
  public Example bad() {
    return Example.steps(
        """
        - call: buzz
          procedure: buzz
          branches:
            - when: buzz is gone
              go: fine
            - when: buzz is not gone
              go: fine
        - done: fine
          text: The buzz was looked for.
          outcome: looked
        """);
  }

  @Override
  public Example good() {
    return Example.steps(
        """
        - call: buzz
          procedure: buzz
          branches:
            - when: buzz is none
              go: fine
            - when: buzz is not none
              go: fine
        - done: fine
          text: The buzz was looked for.
          outcome: looked
        """);
  }
}
