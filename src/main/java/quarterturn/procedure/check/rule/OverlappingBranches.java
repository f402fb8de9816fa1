package quarterturn.procedure.check.rule;

import quarterturn.procedure.Branch;
import quarterturn.procedure.check.walk.Fan;
import quarterturn.procedure.check.walk.Reachability;

/** The rule that no answer has two ways on. */
public final class OverlappingBranches {
  public static final Rule RULE =
      new Rule(
          "overlapping-branches",
          "No two branches of a step hold at once and lead to different steps.",
          OverlappingBranches::prove);

  private OverlappingBranches() {}

  private static void prove(Proof proof, Findings found) {
    for (Reachability.Wanting fork : proof.paths().wanting()) {
      for (Fan.Overlap overlap : fork.spread().overlaps()) {
        Branch first = fork.fan().fork().branches().get(overlap.first());
        Branch second = fork.fan().fork().branches().get(overlap.second());
        found.add(
            second.mark(),
            "the branches to "
                + first.go()
                + " and to "
                + second.go()
                + " both hold for: "
                + fork.fan().words(overlap.cells()),
            "let each answer have one way on; where two questions mix, ask one a step",
            proof.paths().way(fork.node()));
      }
    }
  }
}
