package quarterturn.lesson.student;

import java.util.ArrayList;
import java.util.List;
import quarterturn.lesson.Level;
import quarterturn.session.Prompt;
import quarterturn.session.PromptText;
import quarterturn.unit.Decimals;

/**
 * Shortens a prompt as a student learns: first what to expect goes, then the reason. What to do,
 * what has changed, and every hazard stay at every level.
 */
public final class Fade {
  private Fade() {}

  /** The steps of the worked example for a prompt, the last one first to go. */
  public static List<String> worked(Prompt prompt) {
    List<String> steps = new ArrayList<>(prompt.said().notes());
    if (prompt.said().why() != null) {
      steps.add(prompt.said().why());
    }
    if (prompt instanceof Prompt.TurnRod turn && turn.expected() != null) {
      steps.add(
          "Expect the next reading to be no more than "
              + Decimals.print(turn.expected().highMm(), 2)
              + " mm.");
    }
    return steps;
  }

  /** The steps of the worked example that are shown at a level. */
  public static List<String> worked(Prompt prompt, Level level) {
    List<String> steps = worked(prompt);
    return List.copyOf(steps.subList(0, level.shown(steps.size())));
  }

  /** The prompt without what the level leaves to the student. */
  public static Prompt of(Prompt prompt, Level level) {
    PromptText said = said(prompt.said(), level);
    return prompt.match(
        new Prompt.Cases<>(
            p -> p,
            p -> p,
            p -> p,
            p -> p,
            p -> p.saying(said),
            p ->
                new Prompt.TurnRod(
                    said,
                    p.turn(),
                    p.limit(),
                    level == Level.WORKED ? p.expected() : null,
                    p.canUndo(),
                    p.stops(),
                    p.back()),
            p -> p,
            p -> p,
            p -> p));
  }

  private static PromptText said(PromptText said, Level level) {
    boolean reasons = level.compareTo(Level.TWO_MISSING) < 0;
    return new PromptText(
        said.procedure(),
        said.step(),
        said.part(),
        said.text(),
        reasons ? said.why() : null,
        said.hazards(),
        said.picture(),
        said.notes());
  }
}
