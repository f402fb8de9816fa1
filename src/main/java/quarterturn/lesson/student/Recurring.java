package quarterturn.lesson.student;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import quarterturn.session.Question;
import quarterturn.unit.NotUnderstoodException;
import quarterturn.unit.Printable;

/** An answer to one question, and whether the question is to come back at the next lesson. */
final class Recurring {
  private static final int LONGEST = 300;

  private @Nullable String answer;

  /** The answer that was given, or null. */
  @Nullable String answer() {
    return answer;
  }

  /** The question, or, once it was answered, the question whether it is to come back. */
  Question question(String title, List<String> lines, String question, String student) {
    List<String> all = new ArrayList<>(lines);
    all.add(question);
    return answer == null
        ? new Question.Words(
            title, all, student + ", your answer", "Your own words, one line.", false, true)
        : new Question.Choose(
            title,
            all,
            "Shall this question come back next time? yes or no",
            "yes: it is asked again at the next lesson.",
            List.of(new Question.Option("yes"), new Question.Option("no")));
  }

  /**
   * Takes first the answer, returning null, and then yes or no, returning whether the question is
   * to come back.
   */
  @Nullable Boolean take(String text) {
    if (answer == null) {
      answer = words(text);
      return null;
    }
    String word = text.toLowerCase(Locale.ROOT);
    if (!word.matches("y|yes|n|no")) {
      throw new NotUnderstoodException("Type yes or no.");
    }
    return word.startsWith("y");
  }

  boolean back() {
    boolean some = answer != null;
    answer = null;
    return some;
  }

  /** Checks a line of a student's own words and returns it without blanks at its ends. */
  static String words(String text) {
    String safe = Printable.of(text).strip();
    if (safe.isEmpty() || safe.length() > LONGEST) {
      throw new NotUnderstoodException("A few words, please; at most " + LONGEST + " characters.");
    }
    return safe;
  }
}
