package quarterturn.procedure.check.rule;

import quarterturn.procedure.Step;
import quarterturn.procedure.check.walk.Skips;
import quarterturn.procedure.condition.Role;

/** The rule that a wait that one role has to let pass is not skipped for a beginner. */
public final class SkippedWait {
  public static final Rule RULE =
      new Rule(
          "skipped-wait",
          "A wait that one role has to let pass is not skipped for a beginner.",
          SkippedWait::prove);

  private SkippedWait() {}

  private static void prove(Proof proof, Findings found) {
    for (Skips.Skip skip : Skips.of(proof.procedure())) {
      if (skip.step() instanceof Step.Wait && skip.skipped() == Role.BEGINNER) {
        found.add(
            skip.fork().mark(),
            "a beginner skips the wait " + skip.step().id(),
            "only a technician may shorten a wait, with a reason",
            skip.way());
      }
    }
  }
}
