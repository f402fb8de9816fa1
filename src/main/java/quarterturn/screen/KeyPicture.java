package quarterturn.screen;

import org.jspecify.annotations.Nullable;

/** A key in its socket, cut open: fully seated, and not. */
final class KeyPicture {
  private static final String[] SEATED = {
    "         ║ ║  key",
    "  ┌──────╢ ╟──────┐",
    "  │ rod  ║ ║  nut │",
    "  │      ╚═╝      │",
    "  └───────────────┘",
    "SEATED: to the bottom,",
    "and it does not rock"
  };
  private static final String[] NOT = {
    "         ║ ║  key",
    "         ║ ║",
    "  ┌──────╢ ╟──────┐",
    "  │ rod  ╚═╝  nut │",
    "  │      ░░░      │ ◄ empty",
    "  └───────────────┘",
    "NOT SEATED: it stops short",
    "or rocks"
  };
  private static final int APART = 34;

  private KeyPicture() {}

  static @Nullable Canvas draw(int width, int rows) {
    if (width < APART + 28 || rows < NOT.length) {
      return null;
    }
    Canvas canvas = new Canvas(width, NOT.length);
    for (int r = 0; r < SEATED.length; r++) {
      canvas.put(2, r + 1, SEATED[r], r >= 5 ? Ink.STRONG : Ink.PLAIN);
    }
    for (int r = 0; r < NOT.length; r++) {
      canvas.put(2 + APART, r, NOT[r], r >= 6 ? Ink.STRONG : Ink.PLAIN);
    }
    return canvas;
  }
}
