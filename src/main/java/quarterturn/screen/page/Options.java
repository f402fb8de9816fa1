package quarterturn.screen.page;

import java.util.ArrayList;
import java.util.List;
import quarterturn.screen.terminal.Canvas;
import quarterturn.screen.terminal.Ink;
import quarterturn.screen.terminal.Wrap;

/** Draws numbered options, one of which can be marked. */
final class Options {
  private Options() {}

  /**
   * The options; where not all fit, those around the marked one.
   *
   * @param at index of the marked option, or -1
   */
  static Canvas draw(List<String> labels, int at, int width, int mostRows) {
    List<Integer> owner = new ArrayList<>();
    List<String> lines = new ArrayList<>();
    for (int i = 0; i < labels.size(); i++) {
      for (String line : Wrap.lines(labels.get(i), width - 6)) {
        boolean first = owner.isEmpty() || owner.get(owner.size() - 1) != i;
        lines.add((first ? String.format("%2d  ", i + 1) : "    ") + line);
        owner.add(i);
      }
    }
    int rows = Math.min(lines.size(), Math.max(1, mostRows));
    int marked = Math.max(0, owner.indexOf(at));
    int from = Math.max(0, Math.min(marked - rows / 2, lines.size() - rows));
    Canvas canvas = new Canvas(width, rows);
    for (int r = 0; r < rows; r++) {
      boolean on = owner.get(from + r) == at;
      canvas.put(0, r, on ? "►" : " ", Ink.STRONG);
      canvas.put(1, r, lines.get(from + r) + " ", on ? Ink.NOW : Ink.PLAIN);
    }
    if (from > 0) {
      more(canvas, 0, "▲ more");
    }
    if (from + rows < lines.size()) {
      more(canvas, rows - 1, "▼ more");
    }
    return canvas;
  }

  private static void more(Canvas canvas, int row, String words) {
    canvas.put(canvas.width() - Canvas.cells(words), row, words, Ink.STRONG);
  }
}
