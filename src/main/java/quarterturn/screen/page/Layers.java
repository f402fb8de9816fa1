package quarterturn.screen.page;

import java.util.List;
import quarterturn.screen.state.Model;
import quarterturn.screen.terminal.Canvas;
import quarterturn.screen.terminal.Ink;

/** Draws a view over the step: a title with lines, or the picture alone. */
final class Layers {
  /** Rows around a view's lines, for the title and blanks. */
  private static final int AROUND = 4;

  private Layers() {}

  static int mostScroll(List<Line> lines, int rows) {
    return Math.max(0, lines.size() - inView(rows));
  }

  /** How many lines are in view. */
  static int inView(int rows) {
    return rows - AROUND;
  }

  static Canvas draw(String title, List<Line> lines, Model model, int width, int rows) {
    Canvas canvas = new Canvas(width, rows);
    canvas.put(2, 1, title, Ink.STRONG);
    int room = inView(rows);
    int from = Math.min(model.scroll(), mostScroll(lines, rows));
    Line.draw(canvas, 2, 3, lines, from, room);
    if (from + room < lines.size()) {
      canvas.put(2, rows - 1, "▼ more below");
    }
    return canvas;
  }

  static Canvas picture(Model model, int width, int rows) {
    Canvas picture = Pictures.of(model, width - 4, rows - 2);
    Canvas canvas = new Canvas(width, rows);
    if (picture == null) {
      canvas.put(2, 1, "This step has no picture.");
    } else {
      canvas.paste(2, 1, picture);
    }
    return canvas;
  }
}
