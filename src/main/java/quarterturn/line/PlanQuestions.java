package quarterturn.line;

import java.io.IOException;
import java.io.PrintWriter;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import quarterturn.lesson.PlanPart;
import quarterturn.unit.NotUnderstood;

/** Asks a teacher for the parts of a plan, one after the other, in plain typed lines. */
public final class PlanQuestions {
  private PlanQuestions() {}

  /** Holds what is typed against what there is. */
  public interface Check {
    /**
     * Checks the parts so far.
     *
     * @throws NotUnderstood saying what is taken
     */
    void check(Map<PlanPart, String> typed);

    /** What is taken where nothing is typed for a part. */
    String usual(PlanPart part);

    /** What there is to choose from for a part, or null where that stands in the question. */
    @Nullable String choices(PlanPart part);
  }

  /**
   * Asks until all is answered; Enter takes what stands in brackets.
   *
   * @return null where the teacher leaves, or the input ends
   */
  public static @Nullable Map<PlanPart, String> ask(Check check, LineSource in, PrintWriter out)
      throws IOException, LineSource.Interrupted {
    Paper paper = new Paper(out, in);
    paper.say("Enter takes what stands in brackets; quit leaves, and nothing is made.");
    Map<PlanPart, String> typed = new EnumMap<>(PlanPart.class);
    for (PlanPart part : PlanPart.values()) {
      String choices = check.choices(part);
      paper.say(
          (part.ordinal() + 1)
              + " of "
              + PlanPart.values().length
              + ". "
              + part.meaning()
              + (choices == null ? "" : " There are: " + choices + "."));
      String usual = check.usual(part);
      boolean taken = false;
      while (!taken) {
        String line = in.readLine(part.label() + " [" + usual + "]: ", List.of("quit"));
        if (line == null || line.strip().equals("quit")) {
          return null;
        }
        typed.put(part, line.isBlank() ? usual : line.strip());
        try {
          check.check(typed);
          taken = true;
        } catch (NotUnderstood e) {
          paper.say("Not taken: " + e.getMessage() + ".");
          typed.remove(part);
        }
      }
    }
    return typed;
  }
}
