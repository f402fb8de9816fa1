package quarterturn.procedure.check;

import quarterturn.procedure.Step;
import quarterturn.procedure.check.walk.FlowGraph;

/** Every way has an end. */
final class NoEnd {
  static final Rule RULE =
      new Rule("no-end", "From every step a done or a hand-over can be reached.", NoEnd::prove);

  private NoEnd() {}

  private static void prove(Proof proof, Findings found) {
    for (Step step : proof.steps().values()) {
      if (!FlowGraph.ends(proof.procedure(), step.id())) {
        found.add(
            step.mark(),
            "from " + step.id() + " neither a done nor a hand-over can be reached",
            "let one of its ways lead to an end",
            proof.way(step));
      }
    }
  }
}
