package quarterturn.lesson.student;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import quarterturn.procedure.LessonQuestion;
import quarterturn.unit.NotUnderstoodException;
import quarterturn.unit.Printable;

/**
 * A question that is answered by a letter: the right answer and the wrong ideas stand to choose
 * from. Without wrong ideas it is answered in words, and nobody misses it.
 */
record Choice(LessonQuestion ask) {
  private static final int LONGEST = 300;

  /** An answer, and whether it was a wrong one. */
  record Made(String answer, boolean missed) {}

  private List<String> options() {
    return ask.ideas().isEmpty() ? List.of() : Questions.options(ask);
  }

  /** The question and what there is to choose from. */
  List<String> lines() {
    List<String> out = new ArrayList<>();
    out.add(lead() + ask.question());
    List<String> options = options();
    for (int i = 0; i < options.size(); i++) {
      out.add(letter(i) + ": " + options.get(i));
    }
    return out;
  }

  private String lead() {
    return switch (ask.kind()) {
      case PREDICT -> "Once more, now that you know: ";
      case IDEA -> "Now another case: ";
      case CHECK -> "To check: ";
    };
  }

  private static String letter(int i) {
    return String.valueOf((char) ('a' + i));
  }

  String asks() {
    int last = options().size() - 1;
    return last < 0 ? "A few words" : "The letter, a to " + letter(last);
  }

  boolean fits(String typed) {
    return options().isEmpty()
        ? !typed.isBlank()
        : typed.length() == 1 && index(typed) >= 0 && index(typed) < options().size();
  }

  private static int index(String typed) {
    return typed.toLowerCase(Locale.ROOT).charAt(0) - 'a';
  }

  /**
   * The answer that a text gives.
   *
   * @throws NotUnderstoodException where it gives none
   */
  Made made(String typed) {
    if (options().isEmpty()) {
      return new Made(words(typed), false);
    }
    if (!fits(typed)) {
      throw new NotUnderstoodException(
          "\"" + Printable.of(typed) + "\" is no answer here. " + asks() + ".");
    }
    String answer = options().get(index(typed));
    return new Made(answer, !answer.equals(Questions.right(ask)));
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
