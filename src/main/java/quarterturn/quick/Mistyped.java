package quarterturn.quick;

import java.io.Serial;
import java.util.List;
import java.util.Locale;

/** A typed line that can't be taken, with the word that is at fault. */
public final class Mistyped extends Exception {
  @Serial private static final long serialVersionUID = 1;

  private final int at;

  Mistyped(int at, String wrong, String mend) {
    super(sentence(wrong) + (mend.isEmpty() ? "" : " " + sentence(mend)), null, false, false);
    this.at = at;
  }

  private static String sentence(String text) {
    String first = text.isEmpty() ? "" : text.substring(0, 1).toUpperCase(Locale.ROOT);
    return text.isEmpty() ? text : first + text.substring(1) + (text.endsWith(".") ? "" : ".");
  }

  /** Where the word begins on the line, from 0; its length where something is missing. */
  public int at() {
    return at;
  }

  /**
   * Lines for the person: the typed line, a mark under the wrong word, what is wrong, what to type.
   */
  public List<String> lines(String line) {
    return List.of(
        line, " ".repeat(line.codePointCount(0, at)) + "^", String.valueOf(getMessage()));
  }
}
