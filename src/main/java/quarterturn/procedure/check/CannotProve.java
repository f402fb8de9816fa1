package quarterturn.procedure.check;

import quarterturn.procedure.Subject;

/** What is too wide to be proven is said. */
final class CannotProve implements Proving {
  @Override
  public String id() {
    return "cannot-prove";
  }

  @Override
  public String means() {
    return "Every way can be walked; what is too wide to be proven is never passed over in silence.";
  }

  @Override
  public void prove(Proof proof, Findings found) {
    Paths paths = proof.paths();
    if (!paths.whole()) {
      found.add(
          this,
          proof.procedure().step(proof.procedure().begin()).mark(),
          "there are more ways through this procedure than can be walked, so nothing is proven",
          "split it into procedures that call each other, or let later steps ask about less");
    }
    for (Subject subject : paths.frame().tooMany()) {
      found.add(
          this,
          proof.procedure().step(proof.procedure().begin()).mark(),
          "conditions tell apart more than "
              + Domain.MOST
              + " cases of one thing: "
              + subject.words(),
          "ask about fewer of its answers by themselves");
    }
    for (Paths.Wanting fork : paths.wanting()) {
      if (!fork.spread().whole()) {
        found.add(
            this,
            fork.node().step().mark(),
            "the branches of " + fork.node().step().id() + " ask about too many things at once",
            "ask about one thing a step",
            paths.way(fork.node()));
      }
    }
  }

  /** As many questions as make too many cases. */
  private static final int MANY = 18;

  @Override
  public Example bad() {
    StringBuilder steps = new StringBuilder();
    StringBuilder all = new StringBuilder("look-1 is even");
    for (int i = 1; i <= MANY; i++) {
      steps.append(question(i, i < MANY ? "look-" + (i + 1) : "together"));
      all.append(i > 1 ? " and look-" + i + " is even" : "");
    }
    String fork =
        """
        - compute: together
          calculation: response
          branches:
            - when: %s
              go: even
            - when: look-1 is high
              go: high
        - done: even
          text: All frets are even.
          outcome: even
        - done: high
          text: A fret stands out.
          outcome: high
        """
            .formatted(all);
    Example whole = Example.steps(steps + fork);
    return new Example(fork, whole.file());
  }

  private static String question(int number, String next) {
    return """
        - choose: look-%d
          text: Does fret %d stand out?
          options:
            - is: even
              label: No
              go: %s
            - is: high
              label: Yes
              go: %s
        """
        .formatted(number, number, next, next);
  }

  @Override
  public Example good() {
    return Example.steps(
        question(1, "together")
            + """
            - compute: together
              calculation: response
              branches:
                - when: look-1 is even
                  go: even
                - when: look-1 is high
                  go: high
            - done: even
              text: The fret is even.
              outcome: even
            - done: high
              text: The fret stands out.
              outcome: high
            """);
  }
}
