package quarterturn.lesson.student;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import quarterturn.session.Dialogue;
import quarterturn.session.Question;
import quarterturn.session.RefusedException;

/** Asks a student's missed questions of earlier lessons, and tells the answer key after each. */
record AskingAgain(LessonSession session, String student) implements Dialogue {
  static final String TITLE = "It comes back";

  @Override
  public @Nullable Question question() {
    List<String> due = session.due(student);
    if (due.isEmpty()) {
      return null;
    }
    Choice choice = session.choice(due.get(0));
    List<String> lines = new ArrayList<>(List.of("From an earlier lesson, for " + student + ":"));
    lines.addAll(choice.lines());
    String asks = student + ": " + choice.asks();
    return new Question.Words(TITLE, lines, asks, "What was missed comes back.", false, true);
  }

  @Override
  public Taken take(String text) throws RefusedException, IOException {
    String question = session.due(student).get(0);
    return new Taken("", session.askedAgain(student, session.choice(question), text));
  }
}
