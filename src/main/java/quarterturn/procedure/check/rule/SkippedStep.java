package quarterturn.procedure.check.rule;

import quarterturn.procedure.check.walk.Skips;

/** The rule that no role is led around a step marked never-skip. */
public final class SkippedStep {
  public static final Rule RULE =
      new Rule(
          "skipped-step",
          "A step that is marked never-skip is passed by every role.",
          SkippedStep::prove);

  private SkippedStep() {}

  private static void prove(Proof proof, Findings found) {
    for (Skips.Skip skip : Skips.of(proof.procedure())) {
      if (skip.step().words().neverSkip()) {
        found.add(
            skip.fork().mark(),
            "a "
                + skip.skipped().word()
                + " skips "
                + skip.step().id()
                + ", which is marked never-skip",
            "let the branch for that role lead through it",
            skip.way());
      }
    }
  }
}
