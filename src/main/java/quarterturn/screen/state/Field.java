package quarterturn.screen.state;

import quarterturn.screen.terminal.Key;
import quarterturn.unit.Pasted;
import quarterturn.unit.Printable;

/**
 * A line of text being typed.
 *
 * @param text the text so far
 * @param at index of the cursor, 0 to the length of the text
 */
public record Field(String text, int at) {
  public static final Field EMPTY = new Field("", 0);

  public static Field of(String text) {
    return new Field(text, text.length());
  }

  public boolean blank() {
    return text.isBlank();
  }

  /** The field after a key; the same field where the key means nothing in it. */
  public Field with(Key key) {
    if (key instanceof Key.Typed typed) {
      return typed(typed.codePoint());
    }
    if (key instanceof Key.Paste paste) {
      return inserted(paste.pasted().fitting(text));
    }
    if (key instanceof Key.Ctrl ctrl) {
      return ctrl.letter() == 'u' ? EMPTY : this;
    }
    if (!(key instanceof Key.Named named)) {
      return this;
    }
    return switch (named) {
      case BACKSPACE -> at == 0 ? this : without(before(), at, before());
      case DELETE -> at == text.length() ? this : without(at, after(), at);
      case LEFT -> at == 0 ? this : new Field(text, before());
      case RIGHT -> at == text.length() ? this : new Field(text, after());
      case HOME -> new Field(text, 0);
      case END -> of(text);
      default -> this;
    };
  }

  /** What to tell of a key that this field can't take in whole; empty for any other. */
  public String refusal(Key key) {
    return key instanceof Key.Paste paste && !paste.pasted().fits(text) ? Pasted.REFUSED : "";
  }

  private Field typed(int codePoint) {
    String c = Character.toString(codePoint);
    boolean fits = Pasted.bytes(text) + Pasted.bytes(c) <= Pasted.MOST;
    return Printable.shown(codePoint) && fits ? inserted(c) : this;
  }

  private Field inserted(String more) {
    return new Field(text.substring(0, at) + more + text.substring(at), at + more.length());
  }

  private int before() {
    return text.offsetByCodePoints(at, -1);
  }

  private int after() {
    return text.offsetByCodePoints(at, 1);
  }

  private Field without(int from, int to, int cursor) {
    return new Field(text.substring(0, from) + text.substring(to), cursor);
  }
}
