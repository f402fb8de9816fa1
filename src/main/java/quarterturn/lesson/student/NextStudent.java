package quarterturn.lesson.student;

import java.util.List;
import org.jspecify.annotations.Nullable;
import quarterturn.lesson.Students;
import quarterturn.session.Question;
import quarterturn.unit.NotUnderstoodException;

/** Asks which of several students goes next: nobody is called up. */
final class NextStudent {
  private final List<String> missing;
  private @Nullable String student;

  NextStudent(List<String> missing) {
    this.missing = missing;
    this.student = missing.size() == 1 ? missing.get(0) : null;
  }

  /** The student who goes next, or null where that is to be asked. */
  @Nullable String student() {
    return student;
  }

  Question question(String title, List<String> lines, String who) {
    String asks = who + " " + String.join(", ", missing);
    List<Question.Option> options = missing.stream().map(Question.Option::new).toList();
    return new Question.Choose(title, lines, asks, "Type a name, or its beginning.", options);
  }

  void take(String typed) {
    student = Students.match(typed, missing);
    if (student == null) {
      throw new NotUnderstoodException(
          "Type a name, or its beginning: " + String.join(", ", missing) + ".");
    }
  }

  boolean back() {
    boolean chosen = student != null && missing.size() > 1;
    student = chosen ? null : student;
    return chosen;
  }
}
