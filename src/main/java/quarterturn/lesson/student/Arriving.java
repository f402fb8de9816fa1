package quarterturn.lesson.student;

import java.io.IOException;
import java.util.List;
import quarterturn.lesson.Students;
import quarterturn.session.Dialogue;
import quarterturn.session.Question;
import quarterturn.session.RefusedException;

/** Asks which students are at a bench. */
record Arriving(LessonSession session) implements Dialogue {
  @Override
  public Question question() {
    List<String> expected = session.plan().students();
    return new Question.Words(
        "Welcome",
        List.of(
            expected.isEmpty()
                ? "The lesson: " + session.plan().title() + "."
                : "Expected: " + String.join(", ", expected) + "."),
        "Who is at this bench?",
        "Type the names you choose, with commas between them.");
  }

  @Override
  public Taken take(String text) throws RefusedException, IOException {
    for (String student : Students.of(text)) {
      session.come(student);
    }
    return Taken.SILENTLY;
  }
}
