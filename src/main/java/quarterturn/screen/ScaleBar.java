package quarterturn.screen;

import org.jspecify.annotations.Nullable;
import quarterturn.craft.Window;
import quarterturn.procedure.Verdict;
import quarterturn.unit.Bracket;
import quarterturn.unit.Decimals;

/** The window and a reading on one scale of millimetres. */
final class ScaleBar {
  static final int ROWS = 6;

  private ScaleBar() {}

  /** Six rows: what stands in them is said in words too. */
  static Canvas draw(@Nullable Window window, @Nullable Bracket reading, int width) {
    Canvas canvas = new Canvas(width, ROWS);
    double most = most(window, reading);
    double step = most <= 0.5 ? 0.1 : most <= 1 ? 0.2 : most <= 2 ? 0.5 : 1;
    int cells = width - 6;
    canvas.row(1, 1, cells + 1, '─', Ink.PLAIN);
    for (int i = 0; i * step <= most + 1e-9; i++) {
      int at = column(i * step, most, cells);
      canvas.set(at, 1, i == 0 ? '├' : '┼');
      canvas.put(Math.max(0, at - 1), 0, i == 0 ? " 0" : Decimals.print(i * step, 1));
    }
    canvas.put(cells + 3, 1, "mm");
    if (window != null) {
      bar(canvas, 2, window.lowMm(), window.highMm(), '═', most, cells);
    }
    if (reading != null) {
      reading(canvas, reading, most, cells);
    }
    canvas.put(1, 4, window == null ? "" : Wrap.cut("[══] window " + window, width - 1));
    canvas.put(
        1,
        5,
        reading == null
            ? "No reading yet"
            : Wrap.cut("[██] reading " + reading + verdict(reading, window), width - 1));
    return canvas;
  }

  private static double most(@Nullable Window window, @Nullable Bracket reading) {
    double high = window == null ? 0.5 : window.highMm();
    if (reading != null) {
      high = Math.max(high, reading.beyondGauge() ? reading.lowMm() : reading.highMm());
    }
    return Math.max(0.5, Math.ceil(high * 1.15 * 10 - 1e-9) / 10);
  }

  private static int column(double mm, double most, int cells) {
    return 1 + (int) Math.round(Math.max(0, Math.min(most, mm)) / most * cells);
  }

  private static void reading(Canvas canvas, Bracket reading, double most, int cells) {
    if (reading.noGap() && reading.highMm() <= 0) {
      canvas.put(1, 3, "◄ touches", Ink.STRONG);
      return;
    }
    double low = reading.noGap() ? 0 : reading.lowMm();
    double high = reading.beyondGauge() ? most : reading.highMm();
    bar(canvas, 3, low, high, '█', most, cells);
    if (reading.noGap()) {
      canvas.set(1, 3, '◄');
    }
    if (reading.beyondGauge()) {
      canvas.set(column(most, most, cells), 3, '►');
    }
  }

  private static void bar(
      Canvas canvas, int row, double low, double high, int fill, double most, int cells) {
    int from = column(low, most, cells);
    int to = Math.max(from + 1, column(high, most, cells));
    canvas.row(from, row, to - from, fill, Ink.PLAIN);
    canvas.set(from, row, '[');
    canvas.set(to, row, ']');
  }

  private static String verdict(Bracket reading, @Nullable Window window) {
    if (window == null) {
      return "";
    }
    return switch (Verdict.of(reading, window)) {
      case IN -> ": in the window";
      case BELOW -> ": below the window";
      case ABOVE -> ": above the window";
      case UNDECIDED -> ": across the edge of the window";
      case TOUCHES, NOT_MEASURED -> "";
    };
  }
}
