package quarterturn.procedure.check;

/** What nobody may skip, nobody skips. */
final class SkippedStep {
  private static final String LOOK =
      """
      - choose: rest
        text: Is there a crack?
        never-skip: true
        options:
          - is: sound
            label: No
            go: play
          - is: crack
            label: Yes
            go: fine
      """;

  private static final String EXPLAIN =
      """
      - tell: explain
        text: Under load a crack grows.
        go: rest
      """;

  static final Rule RULE =
      new Rule(
          "skipped-step",
          "A step that is marked never-skip is passed by every role.",
          SkippedStep::prove,
          new Examples(
              Example.steps(Pieces.roles("explain", "rest") + EXPLAIN + LOOK + Pieces.PLAY),
              Example.steps(Pieces.roles("rest", "play") + LOOK + Pieces.PLAY)));

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
