package quarterturn.procedure.check.rule;

import quarterturn.procedure.InWindow;
import quarterturn.procedure.Step;
import quarterturn.procedure.check.walk.Fan;
import quarterturn.procedure.check.walk.Reachability;
import quarterturn.procedure.condition.Condition;

/** The rule that a step's words are true when they are read. */
public final class NotAsExpected {
  public static final Rule RULE =
      Rule.ofSteps(
          "not-as-expected",
          "What a step expects holds on every way that leads to it.",
          NotAsExpected::prove);

  private static final String SAYS =
      "as its outcome is in-window, what was read has to be fresh, and in range";

  private NotAsExpected() {}

  private static void prove(Proof proof, Step step, Findings found) {
    Condition expects = step.words().expects();
    if (expects != null) {
      expects(proof, step, proof.paths().expected(step, expects), found);
    } else if (InWindow.says(step)) {
      found.add(
          step,
          step.id() + " says " + InWindow.OUTCOME + ", and nothing that has a range was read",
          "give it another outcome");
    }
  }

  private static void expects(Proof proof, Step step, Fan fan, Findings found) {
    for (Reachability.Node node : proof.paths().at(step.id())) {
      if (proof.paths().stayed(node)) {
        continue;
      }
      for (Fan.Taken taken : fan.spread(node.at()).taken()) {
        if (taken.branch() == Fan.HOLE) {
          found.add(
              node,
              step.id() + " expects something else than: " + fan.words(taken),
              InWindow.says(step)
                  ? "mend the way that leads here; " + SAYS
                  : "mend the way that leads here, or what the step expects and says");
        }
      }
    }
  }
}
