package quarterturn.lesson.student;

import java.util.Arrays;
import java.util.Locale;
import quarterturn.session.Question;
import quarterturn.unit.NotUnderstoodException;

/** Says that a line was not understood without a word of it, where others are not to see it. */
final class Unquoted {
  private Unquoted() {}

  /** The same complaint without its quotation; the question's help where more of it shows. */
  static NotUnderstoodException of(NotUnderstoodException e, String typed, Question asked) {
    String said = String.valueOf(e.getMessage()).replaceAll("\"[^\"]*\"", "That");
    String asks = asked instanceof Question.Asked one ? one.asks() : "";
    String known = (asks + " " + asked.help() + " " + String.join(" ", asked.lines()));
    boolean tells =
        Arrays.stream(typed.toLowerCase(Locale.ROOT).split("[\\s,;:]+"))
            .anyMatch(word -> word.matches(".*\\d.*") && in(said, word) && !in(known, word));
    return new NotUnderstoodException(tells ? asked.help() : said);
  }

  private static boolean in(String text, String word) {
    return text.toLowerCase(Locale.ROOT).contains(word);
  }
}
