package quarterturn.screen.terminal;

/** A key. */
public sealed interface Key {
  /** A character. */
  record Typed(int codePoint) implements Key {}

  /** A letter held with Ctrl, in lower case. */
  record Ctrl(char letter) implements Key {}

  /** F1 to F12. */
  record Function(int number) implements Key {}

  /** A key with a name. */
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
