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

  /** The two beside each other, or one below the other. */
  static @Nullable Canvas draw(int width, int rows) {
    boolean beside = width >= APART + 34;
    int high = beside ? NOT.length : 2 * NOT.length + 1;
    if (rows < high || width < APART) {
      return null;
    }
    Canvas canvas = new Canvas(width, high);
    for (int r = 0; r < NOT.length; r++) {
      Ink ink = r == NOT.length - 1 ? Ink.STRONG : Ink.PLAIN;
      canvas.put(2, r, SEATED[r], ink);
      canvas.put(beside ? 2 + APART : 2, beside ? r : r + NOT.length + 1, NOT[r], ink);
    }
    return canvas;
  }
}
