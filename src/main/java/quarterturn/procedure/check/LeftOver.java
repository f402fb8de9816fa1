package quarterturn.procedure.check;

import java.util.Arrays;
import java.util.stream.Collectors;
import quarterturn.procedure.Branch;
import quarterturn.procedure.Step;

/** Nothing is left over. */
final class LeftOver implements Proving {
  private static final int MOST = 3;

  @Override
  public String id() {
    return "left-over";
  }

  @Override
  public String means() {
    return "Every branch says when it is taken; nothing is left to otherwise.";
  }

  @Override
  public void prove(Proof proof, Findings found) {
    for (Step step : proof.steps().values()) {
      Branch.Fork fork = step.fork();
      if (fork == null || fork.branches().isEmpty() || fork.otherwise() == null) {
        continue;
      }
      found.add(
          this,
          step.mark(),
          "otherwise of " + step.id() + " takes whatever was forgotten",
          "say it with when" + cases(proof, step, fork));
    }
  }

  /** What falls to it, at most a few. */
  private static String cases(Proof proof, Step step, Branch.Fork fork) {
    Fan fan = proof.paths().fan(step);
    int[] masks =
        Arrays.stream(fan.subjects())
            .map(at -> proof.paths().frame().domains().get(at).all())
            .toArray();
    String left =
        fan.spread(masks).taken().stream()
            .filter(taken -> taken.branch() == Fan.REST)
            .limit(MOST)
            .map(taken -> fan.words(taken))
            .collect(Collectors.joining("; "));
    return left.isEmpty() ? "" : "; left over here: " + left;
  }

  @Override
  public Example bad() {
    return Example.steps(
        """
        - choose: rod
          text: Is the rod nut open?
          options:
            - is: open
              label: Yes
              go: ask
            - is: covered
              label: No
              go: ask
        - choose: ask
          text: Is it a wheel?
          options:
            - is: wheel
              label: Yes
              go: fork
            - is: socket
              label: No
              go: fork
        - compute: fork
          calculation: response
          branches:
            - when: ask is wheel
              go: one
            - otherwise: other

        - done: one
          text: The first end.
          outcome: one
        - done: other
          text: The other end.
          outcome: other
        """);
  }

  @Override
  public Example good() {
    return Example.steps(
        """
        - choose: rod
          text: Is the rod nut open?
          options:
            - is: open
              label: Yes
              go: ask
            - is: covered
              label: No
              go: ask
        - choose: ask
          text: Is it a wheel?
          options:
            - is: wheel
              label: Yes
              go: fork
            - is: socket
              label: No
              go: fork
        - compute: fork
          calculation: response
          branches:
            - when: ask is wheel
              go: one
            - when: ask is socket
              go: other

        - done: one
          text: The first end.
          outcome: one
        - done: other
          text: The other end.
          outcome: other
        """);
  }
}
