package quarterturn.screen.terminal;

import java.time.Duration;
import java.util.List;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import quarterturn.platform.Pastes;
import quarterturn.unit.Pasted;

/**
 * Decodes what a terminal sends into keys and pastes; what it reports without being asked is
 * nothing. An Esc may be the key or begin a sequence; when nothing follows for a moment, {@link
 * #giveUp} tells that it was the key.
 */
final class KeyDecoder {
  private static final char ESC = '\u001b';
  private static final char BELL = '\u0007';

  /** How long the rest of a sequence is waited for. */
  private static final Duration SEQUENCE = Duration.ofMillis(60);

  /** The units of a sequence that are remembered; no key has as many. */
  private static final int LONGEST = 32;

  /** The numbers in the sequences of F1, F2 and so on. */
  private static final List<String> FUNCTIONS =
      List.of("11", "12", "13", "14", "15", "17", "18", "19", "20", "21", "23", "24");

  /** Made when the first such key is pressed. */
  private static final class Sequences {
    /** A key's sequence: no numbers, or few, and nothing else between its beginning and its end. */
    static final Pattern KEY = Pattern.compile("\u001b[\\[O][0-9;]*[A-Z~]|\u001b\\[\\[[A-E]");

    /** F1 to F4 with Shift, Alt or Ctrl; with other numbers it tells where the cursor is. */
    static final Pattern MODIFIED = Pattern.compile("\u001b.(1;\\d)?[PQS]|\u001b.R");
  }

  private final StringBuilder held = new StringBuilder();
  private final StringBuilder paste = new StringBuilder();
  private boolean pasting;

  /** Whether what is being pasted is dropped at its end. */
  private boolean forgotten;

  /** Whether a sequence or a paste has begun and may go on. */
  boolean pending() {
    return held.length() > 0 || pasting;
  }

  /** How long to wait for the rest of what has begun. */
  Duration patience() {
    return pasting ? Pastes.LOST : SEQUENCE;
  }

  /** Takes one UTF-16 unit; returns the keys that are complete. */
  List<Key> feed(int unit) {
    if (pasting) {
      return pasted((char) unit);
    }
    char next = (char) unit;
    boolean torn = held.length() > 0 && held.charAt(0) != ESC && !Character.isLowSurrogate(next);
    boolean broken = sequence() && (next < ' ' || next > '~') && !raw();
    if (torn || broken) {
      held.setLength(0);
    }
    held.append(next);
    char first = held.charAt(0);
    if (first != ESC) {
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
    if (told(second)) {
      string(next);
      return List.of();
    }
    if (second != '[' && second != 'O') {
      // Alt with a key, or two keys in a hurry: the same two keys either way.
      held.setLength(0);
      if (second == ESC) {
        held.append(second);
        return List.of(Key.Named.ESC);
      }
      return joined(Key.Named.ESC, plain(second));
    }
    return held.length() == 2 || !complete() ? List.of() : completed();
  }

  private List<Key> completed() {
    String sequence = held.toString();
    held.setLength(0);
    if (sequence.equals(Pastes.BEGIN)) {
      pasting = true;
      return List.of();
    }
    Key key = Sequences.KEY.matcher(sequence).matches() ? key(sequence) : null;
    return key == null ? List.of() : List.of(key);
  }

  /** Returns the keys for what is held, when nothing followed it in time. */
  List<Key> giveUp() {
    if (pasting) {
      return pasted();
    }
    // More than Esc and one key can only be a sequence that was cut off.
    boolean keys = held.length() > 0 && held.length() < 3 && held.charAt(0) == ESC;
    List<Key> rest = held.length() == 2 ? plain(held.charAt(1)) : List.of();
    held.setLength(0);
    return keys ? joined(Key.Named.ESC, rest) : List.of();
  }

  private List<Key> pasted(char next) {
    paste.append(next);
    int end = paste.length() - Pastes.END.length();
    if (next == '~' && end >= 0 && paste.indexOf(Pastes.END, end) == end) {
      paste.setLength(end);
      return pasted();
    }
    if (end > Pasted.MOST + LONGEST) {
      // Nobody bounded it before; its end may have begun.
      paste.delete(Pasted.MOST, Pasted.MOST + LONGEST).insert(Pasted.MOST, Pasted.LEFT_OUT);
    }
    return List.of();
  }

  private List<Key> pasted() {
    Key key = new Key.Paste(Pasted.of(paste.toString()));
    List<Key> keys = forgotten ? List.of() : List.of(key);
    pasting = false;
    forgotten = false;
    paste.setLength(0);
    return keys;
  }

  /** Drops what has begun, with all that belongs to it. */
  void forget() {
    forgotten = pasting;
    held.setLength(0);
  }

  private static List<Key> joined(Key first, List<Key> rest) {
    return rest.isEmpty() ? List.of(first) : List.of(first, rest.get(0));
  }

  /** Whether a sequence of control has begun, of which only printable ASCII is a part. */
  private boolean sequence() {
    return held.length() > 1 && (held.charAt(1) == '[' || held.charAt(1) == 'O');
  }

  /** Whether the three units that end an old mouse's report come next. */
  private boolean raw() {
    return held.length() > 2 && held.length() < 6 && held.indexOf("\u001b[M") == 0;
  }

  /** Whether a text follows that answers a question. */
  private static boolean told(char second) {
    return second == ']' || second == 'P' || second == 'X' || second == '^' || second == '_';
  }

  private void string(char next) {
    boolean ended = next == '\\' && held.length() > 3 && held.charAt(held.length() - 2) == ESC;
    if (ended || (next == BELL && held.length() > 2)) {
      held.setLength(0);
    } else if (held.length() > LONGEST) {
      held.delete(2, held.length() - 1);
    }
  }

  private boolean complete() {
    char last = held.charAt(held.length() - 1);
    if (raw()) {
      return false;
    }
    if (held.indexOf("\u001b[M") == 0) {
      return true;
    }
    if (held.length() > LONGEST) {
      // What has so many numbers is no key, however it ends.
      held.setLength(2);
      held.append('?');
    }
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

  private static @Nullable Key key(String s) {
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
      case 'P', 'Q', 'R', 'S' ->
          Sequences.MODIFIED.matcher(s).matches() ? new Key.Function(last - 'P' + 1) : null;
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
