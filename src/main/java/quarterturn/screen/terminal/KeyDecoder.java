package quarterturn.screen.terminal;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Decodes what a terminal sends into keys. An Esc may be the key or begin a sequence; when nothing
 * follows for a moment, {@link #giveUp} tells that it was the key.
 */
final class KeyDecoder {
  /** The numbers in the sequences of F1, F2 and so on. */
  private static final List<String> FUNCTIONS =
      List.of("11", "12", "13", "14", "15", "17", "18", "19", "20", "21", "23", "24");

  private final StringBuilder held = new StringBuilder();

  /** Whether a sequence has begun and may go on. */
  boolean pending() {
    return held.length() > 0;
  }

  /** Takes one UTF-16 unit; returns the keys that are complete. */
  List<Key> feed(int unit) {
    held.append((char) unit);
    char first = held.charAt(0);
    if (first != '\u001b') {
      if (Character.isHighSurrogate(first) && held.length() == 1) {
        return List.of();
      }
      int codePoint = held.codePointAt(0);
      held.setLength(0);
      return plain(codePoint);
    }
    if (held.length() == 1) {
      return List.of();
    }
    char second = held.charAt(1);
    if (second != '[' && second != 'O') {
      // Alt with a key, or two keys in a hurry: the same two keys either way.
      held.setLength(0);
      if (second == '\u001b') {
        held.append(second);
        return List.of(Key.Named.ESC);
      }
      return joined(Key.Named.ESC, plain(second));
    }
    if (held.length() == 2 || !complete()) {
      return List.of();
    }
    Key key = sequence(held.toString());
    held.setLength(0);
    return key == null ? List.of() : List.of(key);
  }

  /** Returns the keys for the units held, when nothing followed them in time. */
  List<Key> giveUp() {
    boolean esc = held.length() > 0 && held.charAt(0) == '\u001b';
    List<Key> rest = held.length() == 2 ? plain(held.charAt(1)) : List.of();
    held.setLength(0);
    return esc ? joined(Key.Named.ESC, rest) : List.of();
  }

  private static List<Key> joined(Key first, List<Key> rest) {
    return rest.isEmpty() ? List.of(first) : List.of(first, rest.get(0));
  }

  private boolean complete() {
    char last = held.charAt(held.length() - 1);
    boolean linuxFunction = held.length() == 3 && last == '[';
    return !linuxFunction && last >= 0x40 && last <= 0x7e;
  }

  private static List<Key> plain(int c) {
    return switch (c) {
      case '\r', '\n' -> List.of(Key.Named.ENTER);
      case '\t' -> List.of(Key.Named.TAB);
      case '\b', 0x7f -> List.of(Key.Named.BACKSPACE);
      default -> {
        if (c > 0 && c < 27) {
          yield List.of(new Key.Ctrl((char) ('a' + c - 1)));
        }
        yield c < ' ' ? List.of() : List.of(new Key.Typed(c));
      }
    };
  }

  private static @Nullable Key sequence(String s) {
    char last = s.charAt(s.length() - 1);
    if (s.startsWith("\u001b[[")) {
      return new Key.Function(last - 'A' + 1);
    }
    return switch (last) {
      case 'A' -> Key.Named.UP;
      case 'B' -> Key.Named.DOWN;
      case 'C' -> Key.Named.RIGHT;
      case 'D' -> Key.Named.LEFT;
      case 'H' -> Key.Named.HOME;
      case 'F' -> Key.Named.END;
      case 'M' -> s.charAt(1) == 'O' ? Key.Named.ENTER : null;
      case 'P', 'Q', 'R', 'S' -> new Key.Function(last - 'P' + 1);
      case 'Z' -> Key.Named.BACK_TAB;
      case '~' -> numbered(s.substring(2, s.length() - 1).replaceAll(";.*", ""));
      default -> null;
    };
  }

  private static @Nullable Key numbered(String number) {
    return switch (number) {
      case "1", "7" -> Key.Named.HOME;
      case "3" -> Key.Named.DELETE;
      case "4", "8" -> Key.Named.END;
      case "5" -> Key.Named.PAGE_UP;
      case "6" -> Key.Named.PAGE_DOWN;
      default -> {
        int function = FUNCTIONS.indexOf(number);
        yield function < 0 ? null : new Key.Function(function + 1);
      }
    };
  }
}
