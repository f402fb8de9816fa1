package quarterturn.procedure.check.rule;

import quarterturn.procedure.Step;

/** The rule that every way has an end. */
public final class NoEnd {
  public static final Rule RULE =
      Rule.ofSteps("no-end", "From every step a done or a hand-over can be reached.", NoEnd::prove);

  private NoEnd() {}

  private static void prove(Proof proof, Step step, Findings found) {
    if (!proof.ending().contains(step.id())) {
      found.add(
          step.mark(),
          "from " + step.id() + " neither a done nor a hand-over can be reached",
          "let one of its ways lead to an end",
          proof.way(step));
    }
  }
}
