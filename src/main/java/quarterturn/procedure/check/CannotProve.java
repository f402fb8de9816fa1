package quarterturn.procedure.check;

import java.util.stream.Collectors;
import java.util.stream.IntStream;
import quarterturn.procedure.Step;
import quarterturn.procedure.Subject;

/** What is too wide to be proven is said. */
final class CannotProve {
  /** As many questions as make too many cases. */
  private static final int MANY = 18;

  static final Rule RULE =
      new Rule(
          "cannot-prove",
          "Every way can be walked; what is too wide to be proven is never passed over in silence.",
          CannotProve::prove,
          new Examples(good(), bad()));

  private CannotProve() {}

  private static void prove(Proof proof, Findings found) {
    Paths paths = proof.paths();
    Step begin = proof.procedure().step(proof.procedure().begin());
    if (!paths.whole()) {
      found.add(
          begin,
          "there are more ways through this procedure than can be walked, so nothing is proven",
          "split it into procedures that call each other, or let later steps ask about less");
    }
    for (Subject subject : paths.frame().tooMany()) {
      found.add(
          begin,
          "conditions tell apart more than "
              + Domain.MOST
              + " cases of one thing: "
              + subject.words(),
          "ask about fewer of its answers by themselves");
    }
    for (Paths.Wanting fork : paths.wanting()) {
      if (!fork.spread().whole()) {
        found.add(
            fork.node(),
            "the branches of " + fork.node().step().id() + " ask about too many things at once",
            "ask about one thing a step");
      }
    }
  }

  private static Example good() {
    String fork = fork("look-1 is even", "The fret is even.", "The fret stands out.");
    return Example.steps(question(1, "together") + fork);
  }

  private static Example bad() {
    String all =
        IntStream.rangeClosed(1, MANY)
            .mapToObj(i -> "look-" + i + " is even")
            .collect(Collectors.joining(" and "));
    String questions =
        IntStream.rangeClosed(1, MANY)
            .mapToObj(i -> question(i, i < MANY ? "look-" + (i + 1) : "together"))
            .collect(Collectors.joining());
    String fork = fork(all, "All frets are even.", "A fret stands out.");
    return new Example(fork, Example.steps(questions + fork).file());
  }

  private static String question(int number, String next) {
    return """
        - choose: look-%1$d
          text: Does fret %1$d stand out?
          options:
            - is: even
              label: No
              go: %2$s
            - is: high
              label: Yes
              go: %2$s
        """
        .formatted(number, next);
  }

  private static String fork(String even, String all, String one) {
    return """
        - compute: together
          calculation: response
          branches:
            - when: %s
              go: even
            - when: look-1 is high
              go: high
        - done: even
          text: %s
          outcome: even
        - done: high
          text: %s
          outcome: high
        """
        .formatted(even, all, one);
  }
}
