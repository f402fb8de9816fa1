package quarterturn.screen.page;

import java.util.List;
import org.jspecify.annotations.Nullable;
import quarterturn.craft.Window;
import quarterturn.procedure.condition.Verdict;
import quarterturn.screen.terminal.Canvas;
import quarterturn.screen.terminal.Ink;
import quarterturn.screen.terminal.Wrap;
import quarterturn.unit.Bracket;
import quarterturn.unit.Decimals;

/** Draws the window and the readings on one scale in millimetres. */
final class ScaleBar {
  private ScaleBar() {}

  /** A reading to draw and the name of its string. */
  record Mark(String string, Bracket bracket) {}

  /** Rows that {@link #draw} takes. */
  static int rows(int marks) {
    return 4 + 2 * Math.max(1, marks);
  }

  /** Rows of the scale, the window and the readings, without the words below. */
  static int bareRows(int marks) {
    return 3 + Math.max(1, marks);
  }

  /** The scale, window and readings, then the same in words. */
  static Canvas draw(@Nullable Window window, List<Mark> marks, int width) {
    Canvas canvas = new Canvas(width, rows(marks.size()));
    double most = most(window, marks);
    double step = most <= 0.5 ? 0.1 : most <= 1 ? 0.2 : most <= 2 ? 0.5 : 1;
    int cells = width - 6;
    canvas.row(1, 1, cells + 1, '─', Ink.PLAIN);
    for (int i = 0; i * step <= most + 1e-9; i++) {
      int at = column(i * step, most, cells);
      canvas.set(at, 1, i == 0 ? '├' : '┼');
      canvas.put(Math.max(0, at - 1), 0, i == 0 ? " 0" : Decimals.print(i * step, 1));
    }
    canvas.put(cells + 3, 1, "mm");
    int words = 3 + Math.max(1, marks.size());
    if (window != null) {
      bar(canvas, 2, "range", window.lowMm(), window.highMm(), '═', most, cells);
      canvas.put(1, words, Wrap.cut("range " + window, width - 1));
    }
    for (int i = 0; i < marks.size(); i++) {
      reading(canvas, 3 + i, marks.get(i), most, cells);
      canvas.put(1, words + 1 + i, Wrap.cut(inWords(marks.get(i), window), width - 1));
    }
    if (marks.isEmpty()) {
      canvas.put(1, words + 1, "No reading yet");
    }
    return canvas;
  }

  private static double most(@Nullable Window window, List<Mark> marks) {
    double high = window == null ? 0.5 : window.highMm();
    for (Mark mark : marks) {
      Bracket bracket = mark.bracket();
      high = Math.max(high, bracket.beyondGauge() ? bracket.lowMm() : bracket.highMm());
    }
    return Math.max(0.5, Math.ceil(high * 1.15 * 10 - 1e-9) / 10);
  }

  private static int column(double mm, double most, int cells) {
    return 1 + (int) Math.round(Math.max(0, Math.min(most, mm)) / most * cells);
  }

  private static void reading(Canvas canvas, int row, Mark mark, double most, int cells) {
    Bracket bracket = mark.bracket();
    if (bracket.noGap() && bracket.highMm() <= 0) {
      canvas.put(1, row, "◄ " + mark.string() + " touches");
      return;
    }
    double low = bracket.noGap() ? 0 : bracket.lowMm();
    double high = bracket.beyondGauge() ? most : bracket.highMm();
    bar(canvas, row, mark.string(), low, high, '█', most, cells);
    if (bracket.noGap()) {
      canvas.set(1, row, '◄');
    }
    if (bracket.beyondGauge()) {
      canvas.set(column(most, most, cells), row, '►');
    }
  }

  /** Draws a bar with its name on the side that has room. */
  private static void bar(
      Canvas canvas,
      int row,
      String name,
      double low,
      double high,
      int fill,
      double most,
      int cells) {
    int from = column(low, most, cells);
    int to = Math.max(from + 1, column(high, most, cells));
    canvas.row(from, row, to - from, fill, Ink.PLAIN);
    canvas.set(from, row, '[');
    canvas.set(to, row, ']');
    int wide = Canvas.cells(name);
    if (from > wide + 1) {
      canvas.put(from - wide - 1, row, name);
    } else {
      canvas.put(to + 2, row, name);
    }
  }

  private static String inWords(Mark mark, @Nullable Window window) {
    String verdict = "";
    if (window != null) {
      verdict =
          switch (Verdict.of(mark.bracket(), window)) {
            case IN -> ", in range";
            case BELOW, TOUCHES -> ", below it";
            case ABOVE -> ", above it";
            case UNDECIDED -> ", across its edge";
            case NOT_MEASURED -> "";
          };
    }
    return mark.string() + " " + mark.bracket() + verdict;
  }
}
