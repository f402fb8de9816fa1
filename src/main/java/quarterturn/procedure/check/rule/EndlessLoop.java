package quarterturn.procedure.check.rule;

import java.util.ArrayList;
import java.util.List;
import quarterturn.procedure.Step;
import quarterturn.procedure.check.walk.Loops;

/** The rule that every loop has a limit. */
public final class EndlessLoop {
  public static final Rule RULE =
      new Rule(
          "endless-loop",
          "Every loop is limited by a count, or proves its progress: a turn by what the neck answered.",
          EndlessLoop::prove);

  private EndlessLoop() {}

  private static void prove(Proof proof, Findings found) {
    for (List<String> loop : new Loops(proof.procedure()).endless()) {
      Step first = proof.steps().get(loop.get(0));
      Step step =
          loop.stream()
              .map(proof.procedure()::step)
              .filter(one -> !proof.lent(one))
              .findFirst()
              .orElse(first);
      if (step != null && proof.ending().contains(step.id())) {
        List<String> way = new ArrayList<>(loop);
        way.add(step.id());
        found.add(
            step.mark(),
            "this loop can go round for ever",
            "leave it by a count, to an end ("
                + step.id()
                + " reached at least 3 times); where the rod is turned, by an answer of the neck"
                + " that leads out",
            way);
      }
    }
  }
}
