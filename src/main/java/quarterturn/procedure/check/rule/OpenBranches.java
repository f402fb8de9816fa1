package quarterturn.procedure.check.rule;

import quarterturn.procedure.check.walk.Fan;
import quarterturn.procedure.check.walk.Reachability;

/** The rule that some way on is always open. */
public final class OpenBranches {
  public static final Rule RULE =
      new Rule(
          "open-branches",
          "Branches cover every answer, the boundaries and what cannot be measured included.",
          OpenBranches::prove);

  private OpenBranches() {}

  private static void prove(Proof proof, Findings found) {
    for (Reachability.Wanting fork : proof.paths().wanting()) {
      for (Fan.Taken taken : fork.spread().taken()) {
        if (taken.branch() == Fan.HOLE) {
          found.add(
              fork.node(),
              "no branch of " + fork.node().step().id() + " holds for: " + fork.fan().words(taken),
              "add a branch for it, or widen one; a bound belongs to \"at least\", not to \"below\"");
        }
      }
    }
  }
}
