package quarterturn.lesson.store;

import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import quarterturn.session.Dialogue;
import quarterturn.session.Question;
import quarterturn.unit.Counted;
import quarterturn.unit.Printable;

/** Asks once before a student's name is struck. */
public final class StrikeDialogue implements Dialogue {
  private static final String YES = "yes";

  private final Question.Choose question;
  private String answer = "";

  public StrikeDialogue(String student, Striking striking) {
    String name = Printable.of(student);
    String instead =
        striking.came()
            ? "In its place stands: " + striking.shown() + "."
            : name + " was expected and never came.";
    this.question =
        new Question.Choose(
            "Strike the name " + name + "?",
            List.of(
                instead + " What was done and said stays.",
                Counted.of(striking.files(), "file")
                    + " and all sheets in this folder are written anew. It can't be taken back."),
            "Strike it?",
            "Type yes or no.",
            List.of(
                new Question.Option("no", "Keep the name", "", ""),
                new Question.Option(YES, "Strike it", "", "")));
  }

  /** Whether the person said yes. */
  public boolean sure() {
    return answer.equals(YES);
  }

  @Override
  public @Nullable Question question() {
    return answer.isEmpty() ? question : null;
  }

  @Override
  public Taken take(String typed) {
    answer = question.chosen(typed.strip().toLowerCase(Locale.ROOT));
    return Taken.SILENTLY;
  }
}
