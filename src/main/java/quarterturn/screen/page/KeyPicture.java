package quarterturn.screen.page;

import org.jspecify.annotations.Nullable;
import quarterturn.screen.terminal.Canvas;
import quarterturn.screen.terminal.Ink;

/** Draws a key at its nut, of whatever form, fully seated and not fully seated. */
final class KeyPicture {
  private static final String[] SEATED = {
    "─────────────┬───────┐",
    "     key     │  nut  ╞════ rod",
    "─────────────┴───────┘",
    "SEATED: full depth, no rock"
  };
  private static final String[] NOT = {
    "─────────────┐   ┌───────┐",
    "     key     │░░░│  nut  ╞════ rod",
    "─────────────┘ ▲ └───────┘",
    "NOT SEATED: a gap, or it rocks"
  };
  private static final int APART = 34;

  private KeyPicture() {}

  static @Nullable Canvas draw(int width, int rows) {
    if (width < APART + 38 || rows < NOT.length) {
      return null;
    }
    Canvas canvas = new Canvas(width, NOT.length);
    int words = NOT.length - 1;
    for (int r = 0; r < NOT.length; r++) {
      Ink ink = r == words ? Ink.STRONG : Ink.PLAIN;
      canvas.put(2, r, SEATED[r], ink);
      canvas.put(2 + APART, r, NOT[r], ink);
    }
    return canvas;
  }
}
