package quarterturn.screen.page;

import java.util.List;
import quarterturn.screen.state.Model;
import quarterturn.screen.terminal.Canvas;
import quarterturn.screen.terminal.Ink;

/** Draws the bottom rows: readings and turns, window and rod, and the keys that work. */
public final class Foot {
  private static final int ROWS = 4;
  private static final int LOW = 21;

  private Foot() {}

  /** Rows of the foot at a window's height; a low window has no row for window and rod. */
  public static int rows(int height) {
    return height < LOW ? ROWS - 1 : ROWS;
  }

  /**
   * Draws the foot.
   *
   * @param pictureHidden whether to name the key that shows the picture
   */
  static void draw(Canvas canvas, Model model, boolean pictureHidden) {
    int rows = rows(canvas.height());
    int top = canvas.height() - rows;
    int room = canvas.width() - 4;
    canvas.row(0, top, canvas.width(), '─', Ink.PLAIN);
    canvas.put(2, top + 1, Trail.row(model.overview(), room));
    if (rows == ROWS) {
      canvas.put(2, top + 2, Trail.standing(model.overview(), room));
    }
    keys(canvas, canvas.height() - 1, KeyHints.of(model, pictureHidden), room);
  }

  /**
   * Draws as many key hints as fit, closer together where that makes room for all; the last, which
   * leads to all the keys, always does.
   */
  public static void keys(Canvas canvas, int row, List<KeyHints.Hint> hints, int room) {
    int cells = hints.stream().mapToInt(KeyHints.Hint::cells).sum();
    int gap = cells + 3 * (hints.size() - 1) <= room ? 3 : 2;
    KeyHints.Hint last = hints.get(hints.size() - 1);
    int at = 2;
    for (KeyHints.Hint hint : hints.subList(0, hints.size() - 1)) {
      if (at + hint.cells() + gap + last.cells() <= room + 2) {
        at = hint.draw(canvas, at, row) + gap;
      }
    }
    last.draw(canvas, at, row);
  }
}
