package quarterturn.procedure.check.rule;

import java.util.stream.Stream;
import quarterturn.procedure.Branch;
import quarterturn.procedure.check.walk.Fan;
import quarterturn.procedure.check.walk.Reachability;
import quarterturn.procedure.condition.Condition;

/** The rule that no answer has two ways on. */
public final class OverlappingBranches {
  public static final Rule RULE =
      new Rule(
          "overlapping-branches",
          "No two branches of a step hold at once and lead to different steps.",
          OverlappingBranches::prove);

  private OverlappingBranches() {}

  /** How to mend it: "less than 2 times" holds for every other answer of the neck, too. */
  private static String mend(Branch... branches) {
    boolean less = Stream.of(branches).anyMatch(branch -> lessOften(branch.when()));
    return less
        ? "\"less than ... times\" holds for every other answer too: ask for the answer first, and"
            + " for how often in a step of its own"
        : "let each answer have one way on; where two questions mix, ask one a step";
  }

  private static boolean lessOften(Condition condition) {
    return condition instanceof Condition.Not not
        ? not.part() instanceof Condition.Answered
        : condition.parts().stream().anyMatch(OverlappingBranches::lessOften);
  }

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
            mend(first, second),
            proof.paths().way(fork.node()));
      }
    }
  }
}
