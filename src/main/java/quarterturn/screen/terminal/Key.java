package quarterturn.screen.terminal;

import quarterturn.unit.Pasted;

/** A key that was pressed. */
public sealed interface Key {
  /** A key that types a character. */
  record Typed(int codePoint) implements Key {
    /** As every record's; said, since the first key would wait until that is linked. */
    @Override
    public boolean equals(Object other) {
      return other instanceof Typed typed && typed.codePoint == codePoint;
    }

    @Override
    public int hashCode() {
      return codePoint;
    }
  }

  /** Text that was pasted; no key, whatever stands in it. */
  record Paste(Pasted pasted) implements Key {}

  /** A letter pressed with Ctrl, in lower case. */
  record Ctrl(char letter) implements Key {}

  /** A function key, F1 to F12. */
  record Function(int number) implements Key {}

  /** A key with a name, such as Enter. */
  enum Named implements Key {
    ENTER,
    ESC,
    TAB,
    BACK_TAB,
    BACKSPACE,
    DELETE,
    UP,
    DOWN,
    LEFT,
    RIGHT,
    HOME,
    END,
    PAGE_UP,
    PAGE_DOWN
  }
}
