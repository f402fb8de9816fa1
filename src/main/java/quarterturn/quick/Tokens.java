package quarterturn.quick;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The words of a typed line, taken one after the other; a semicolon is a word of its own. */
public final class Tokens {
  private static final Pattern WORD = Pattern.compile(";|[^\\s;]+");

  private record Token(String text, int at) {}

  private final String line;
  private final List<Token> tokens = new ArrayList<>();
  private int next;

  public Tokens(String line) {
    this.line = line;
    Matcher m = WORD.matcher(line);
    while (m.find()) {
      tokens.add(new Token(m.group(), m.start()));
    }
  }

  /** The place of the next word, to come {@link #back} to. */
  int place() {
    return next;
  }

  void back(int place) {
    next = place;
  }

  /** Moves to the next semicolon, or to the end of the line. */
  void passPart() {
    while (!atEnd() && !peek().equals(";")) {
      next++;
    }
  }

  boolean atEnd() {
    return next >= tokens.size();
  }

  /** The next word in small letters, or an empty text at the end of the line. */
  String peek() {
    return peek(0);
  }

  String peek(int ahead) {
    return next + ahead < tokens.size()
        ? tokens.get(next + ahead).text().toLowerCase(Locale.ROOT)
        : "";
  }

  /** Index in the line where the next word begins; the line's length at the end. */
  int at() {
    return atEnd() ? line.length() : tokens.get(next).at();
  }

  String take() {
    String word = peek();
    next++;
    return word;
  }

  boolean take(String word) {
    boolean found = peek().equals(word);
    next += found ? 1 : 0;
    return found;
  }

  /** The text of the line from index {@code from} to the end of the last word that was taken. */
  String since(int from) {
    Token last = tokens.get(next - 1);
    return line.substring(from, last.at() + last.text().length());
  }
}
