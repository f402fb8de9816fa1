package quarterturn.procedure.check;

import quarterturn.procedure.Role;
import quarterturn.procedure.Step;
import quarterturn.procedure.check.proof.Findings;
import quarterturn.procedure.check.proof.Proof;
import quarterturn.procedure.check.proof.Rule;
import quarterturn.procedure.check.walk.Skips;

/** A beginner waits. */
final class SkippedWait {
  static final Rule RULE =
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
