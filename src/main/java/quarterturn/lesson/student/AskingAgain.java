package quarterturn.lesson.student;

import java.io.IOException;
import java.util.List;
import org.jspecify.annotations.Nullable;
import quarterturn.session.Dialogue;
import quarterturn.session.Question;
import quarterturn.session.RefusedException;

/** Asks a student's missed questions of earlier lessons, and tells the answer key after each. */
final class AskingAgain implements Dialogue {
  static final String TITLE = "It comes back";

  private final LessonSession session;
  private final String student;
  private Recurring recurring = new Recurring();

  AskingAgain(LessonSession session, String student) {
    this.session = session;
    this.student = student;
  }

  @Override
  public @Nullable Question question() {
    List<String> due = session.due(student);
    return due.isEmpty()
        ? null
        : recurring.question(
            TITLE, List.of("From an earlier lesson, for " + student + ":"), due.get(0), student);
  }

  @Override
  public Taken take(String text) throws RefusedException, IOException {
    Boolean missed = recurring.take(text);
    String answer = recurring.answer();
    if (missed == null || answer == null) {
      return Taken.SILENTLY;
    }
    recurring = new Recurring();
    return new Taken("", session.askedAgain(student, session.due(student).get(0), answer, missed));
  }

  @Override
  public boolean back() {
    return recurring.back();
  }
}
