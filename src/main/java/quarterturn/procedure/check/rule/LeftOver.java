package quarterturn.procedure.check.rule;

import java.util.Arrays;
import java.util.stream.Collectors;
import quarterturn.procedure.Branch;
import quarterturn.procedure.Step;
import quarterturn.procedure.check.walk.Fan;

/** The rule that every branch states when it is taken, and nothing is left to {@code otherwise}. */
public final class LeftOver {
  private static final int MOST = 3;

  public static final Rule RULE =
      Rule.ofSteps(
          "left-over",
          "Every branch says when it is taken; nothing is left to otherwise.",
          LeftOver::prove);

  private LeftOver() {}

  private static void prove(Proof proof, Step step, Findings found) {
    Branch.Fork fork = step.fork();
    if (!fork.branches().isEmpty() && fork.otherwise() != null) {
      found.add(
          step,
          "otherwise of " + step.id() + " takes whatever was forgotten",
          "say it with when" + cases(proof, step));
    }
  }

  /** Some cases that a step's {@code otherwise} takes, in words; at most {@link #MOST}. */
  private static String cases(Proof proof, Step step) {
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
}
