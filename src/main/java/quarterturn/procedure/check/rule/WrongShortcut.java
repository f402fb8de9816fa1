package quarterturn.procedure.check.rule;

import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Shortcut;
import quarterturn.procedure.Step;
import quarterturn.procedure.bench.BenchState;

/** The rule that a technician's short path leaves nothing out that matters. */
public final class WrongShortcut {
  public static final Rule RULE =
      Rule.ofSteps(
          "wrong-shortcut",
          "On a technician's short path nothing is skipped that does, warns of or guards something.",
          WrongShortcut::prove);

  private WrongShortcut() {}

  private static void prove(Proof proof, Step step, Findings found) {
    Shortcut shortcut = step.words().shortcut();
    String wrong = shortcut == null ? null : wrong(step, shortcut);
    if (wrong != null) {
      found.add(step, step.id() + " " + wrong, "take its short out, or mend that");
    }
  }

  private static @Nullable String wrong(Step step, Shortcut shortcut) {
    if (shortcut.way() == Shortcut.Way.ONCE) {
      return once(step, shortcut);
    }
    boolean skips = shortcut.way() == Shortcut.Way.SKIP;
    String way = skips ? "is skipped" : "is merged";
    if (step.words().neverSkip()) {
      return way + ", and is marked never-skip";
    }
    if (step instanceof Step.Tell tell) {
      if (tell.changes() != null) {
        return way + ", and changes the instrument";
      }
      if (skips && !tell.establishes().isEmpty()) {
        return way + ", and establishes something";
      }
      return skips && !step.words().hazards().isEmpty() ? way + ", and warns of a hazard" : null;
    }
    if (step instanceof Step.Measure) {
      return way + ", and takes a reading";
    }
    if (!skips) {
      return way + ", and is a wait";
    }
    if (step instanceof Step.Wait wait && wait.rest()) {
      return way + ", and is the daily rest";
    }
    return shortcut.when() == null ? way + " on no condition, and is a wait" : null;
  }

  private static @Nullable String once(Step step, Shortcut shortcut) {
    if (step.words().neverSkip()) {
      return "is done once, and is marked never-skip";
    }
    if (shortcut.when() != null) {
      return "is done once, and has a condition";
    }
    return BenchState.lasting(step)
        ? null
        : "is done once, and gives nothing that could still hold";
  }
}
