package quarterturn.screen.page;

import java.util.List;
import quarterturn.screen.terminal.Canvas;
import quarterturn.screen.terminal.Ink;

/**
 * The part of a text with a list of answers that is in view. Where the question has gone out of
 * view at the top, it is shown once more above the rest.
 *
 * @param lines the text, then the answers
 * @param pinned the question in brief; empty for none
 * @param rows the rows there are
 * @param from the first line in view
 */
public record Pane(List<Line> lines, List<Line> pinned, int rows, int from) {
  /**
   * The part in view.
   *
   * @param question index of the first line of the question
   * @param brief the question in brief, to be shown where that line is out of view
   * @param scroll the line that was on top before
   * @param first index of the first line that has to be in view, or -1
   * @param last index of the last line that has to be in view, or -1
   */
  public static Pane of(
      List<Line> lines, int question, List<Line> brief, int rows, int scroll, int first, int last) {
    int from = from(lines.size(), rows, scroll, first, last);
    if (from <= question || brief.isEmpty()) {
      return new Pane(lines, List.of(), rows, from);
    }
    int left = Math.max(1, rows - brief.size());
    return new Pane(lines, brief, rows, from(lines.size(), left, scroll, first, last));
  }

  private static int from(int size, int rows, int scroll, int first, int last) {
    int from = Math.max(0, Math.min(scroll, size - rows));
    if (first >= 0) {
      from = Math.min(Math.max(from, last - rows + 1), first);
    }
    return from;
  }

  boolean more() {
    return from + shown() < lines.size();
  }

  /** How many lines are in view. */
  public int shown() {
    return Math.min(lines.size() - from, Math.max(1, rows - pinned.size()));
  }

  /** Draws it, with a mark in the row above it and in the row below where there is more. */
  public void draw(Canvas canvas, int column, int row) {
    Line.draw(canvas, column, row, pinned, 0, pinned.size());
    Line.draw(canvas, column, row + pinned.size(), lines, from, shown());
    if (from > 0) {
      mark(canvas, row - 1, "▲ PgUp, more above");
    }
    if (more()) {
      mark(canvas, row + rows, "▼ PgDn, more below");
    }
  }

  private static void mark(Canvas canvas, int row, String words) {
    canvas.put(canvas.width() - 2 - Canvas.cells(words), row, words, Ink.STRONG);
  }
}
