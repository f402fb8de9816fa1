package quarterturn.procedure.check.rule;

import quarterturn.procedure.check.walk.Skips;

/** The rule that no role is led around a step marked never-skip, or around a protection. */
public final class SkippedStep {
  public static final Rule RULE =
      new Rule(
          "skipped-step",
          "A step that is marked never-skip, or has a protection put on, is passed by every role.",
          SkippedStep::prove);

  private SkippedStep() {}

  private static void prove(Proof proof, Findings found) {
    for (Skips.Skip skip : Skips.of(proof.procedure())) {
      if (Skips.guards(skip.step())) {
        found.add(
            skip.fork().mark(),
            "a "
                + skip.skipped().word()
                + " skips "
                + skip.step().id()
                + (skip.step().words().neverSkip()
                    ? ", which is marked never-skip"
                    : ", by which a protection is put on"),
            "let the branch for that role lead through it",
            skip.way());
      }
    }
  }
}
