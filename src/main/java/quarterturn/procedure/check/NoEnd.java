package quarterturn.procedure.check;

import quarterturn.procedure.Step;
import quarterturn.procedure.Ways;
import quarterturn.procedure.check.rule.Findings;
import quarterturn.procedure.check.rule.Proof;
import quarterturn.procedure.check.rule.Rule;

/** The rule that every way has an end. */
final class NoEnd {
  static final Rule RULE =
      Rule.ofSteps("no-end", "From every step a done or a hand-over can be reached.", NoEnd::prove);

  private NoEnd() {}

  private static void prove(Proof proof, Step step, Findings found) {
    if (!Ways.ends(proof.procedure(), step.id())) {
      found.add(
          step.mark(),
          "from " + step.id() + " neither a done nor a hand-over can be reached",
          "let one of its ways lead to an end",
          proof.way(step));
    }
  }
}
