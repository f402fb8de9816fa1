package quarterturn.screen;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Something that comes before a step of a lesson: told, or asked for in one line.
 *
 * @param title what it is
 * @param lines its text
 * @param asks what stands over the field, or null where nothing is asked
 * @param hidden whether what is typed is not shown
 * @param help one sentence on what can be typed
 * @param question whether it is a question to be thought about first
 */
record Card(
    String title,
    List<String> lines,
    @Nullable String asks,
    boolean hidden,
    String help,
    boolean question) {
  Card {
    lines = List.copyOf(lines);
  }

  private static final String WAITS = "It goes on by itself.";

  /** Told while something is waited for that no key brings. */
  static Card waiting(String title, List<String> lines) {
    return new Card(title, lines, null, false, WAITS, false);
  }

  boolean waits() {
    return help.equals(WAITS);
  }

  /** Told; Enter goes on. */
  static Card told(String title, List<String> lines) {
    return new Card(title, lines, null, false, "Enter goes on.", false);
  }

  /** Asked for. */
  static Card asked(String title, List<String> lines, String asks, String help) {
    return new Card(title, lines, asks, false, help, false);
  }

  /** A question that everybody thinks about for a while. */
  static Card question(String title, List<String> lines, String asks, String help) {
    return new Card(title, lines, asks, false, help, true);
  }

  /** The same, with what is typed not shown. */
  Card unseen() {
    return new Card(title, lines, asks, true, help, question);
  }
}
