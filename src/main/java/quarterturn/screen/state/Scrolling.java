package quarterturn.screen.state;

import quarterturn.screen.terminal.Key;

/** The distance that a key scrolls. */
public final class Scrolling {
  private Scrolling() {}

  /** Lines down, negative for up, zero for a key that does not scroll. */
  public static int lines(Key key, int page) {
    if (!(key instanceof Key.Named named)) {
      return 0;
    }
    return switch (named) {
      case DOWN -> 1;
      case UP -> -1;
      case PAGE_DOWN -> page;
      case PAGE_UP -> -page;
      default -> 0;
    };
  }
}
