package quarterturn.screen.page;

import java.util.List;
import org.jspecify.annotations.Nullable;
import quarterturn.craft.Window;
import quarterturn.screen.terminal.Canvas;
import quarterturn.screen.terminal.Ink;
import quarterturn.screen.terminal.Wrap;
import quarterturn.session.Overview;
import quarterturn.session.Overview.Entry;
import quarterturn.unit.Bracket;
import quarterturn.unit.Decimals;

/**
 * Draws the readings so far as bars on one scale, over the window and between the turns. Each row
 * stands for one leaf, so that no bar seems to reach a window that it misses.
 */
final class HistoryPicture {
  private static final double STEP_MM = 0.05;
  private static final int MOST = 24;
  private static final int AXIS = 6;
  private static final int CELL = 13;

  private HistoryPicture() {}

  /** The newest readings and turns that fit; null where those have fewer than two readings. */
  static @Nullable Canvas draw(Overview overview, int width, int rows) {
    int levels = Math.min(rows, MOST) - 3;
    List<Entry> trail = overview.trail();
    int from = Math.max(0, trail.size() - (width - AXIS) / CELL);
    while (from < trail.size() && levels(trail.subList(from, trail.size()), overview) > levels) {
      from++;
    }
    List<Entry> shown = trail.subList(from, trail.size());
    if (shown.stream().filter(Entry.Reading.class::isInstance).count() < 2) {
      return null;
    }
    int high = levels(shown, overview);
    int base = level(lowest(shown, overview));
    Canvas canvas = new Canvas(width, high + 3);
    canvas.put(0, 0, "Relief so far, in mm; the range is shaded", Ink.STRONG);
    axis(canvas, base, high, overview.window(), shown.size() * CELL);
    for (int i = 0; i < shown.size(); i++) {
      entry(canvas, shown.get(i), AXIS + i * CELL, base, high, overview);
    }
    return canvas;
  }

  /** Number of the row whose lower edge is at or just below {@code mm}. */
  private static int level(double mm) {
    return (int) Math.floor(mm / STEP_MM + 1e-6);
  }

  private static int levels(List<Entry> entries, Overview overview) {
    return (int) Math.ceil(highest(entries, overview) / STEP_MM - 1e-6)
        - level(lowest(entries, overview));
  }

  private static double lowest(List<Entry> entries, Overview overview) {
    double low = overview.window() == null ? 0 : overview.window().lowMm();
    for (Entry entry : entries) {
      if (entry instanceof Entry.Reading reading) {
        low = Math.min(low, reading.bracket().noGap() ? 0 : reading.bracket().lowMm());
      }
    }
    return low;
  }

  private static double highest(List<Entry> entries, Overview overview) {
    double high = overview.window() == null ? 0.5 : overview.window().highMm();
    for (Entry entry : entries) {
      if (entry instanceof Entry.Reading reading) {
        Bracket bracket = reading.bracket();
        high = Math.max(high, bracket.beyondGauge() ? bracket.lowMm() : bracket.highMm());
      }
    }
    return high + STEP_MM;
  }

  private static void axis(Canvas canvas, int base, int high, @Nullable Window window, int length) {
    for (int i = 0; i < high; i++) {
      int row = high - i;
      double low = (base + i) * STEP_MM;
      canvas.put(0, row, Decimals.print(low, 2));
      canvas.set(AXIS - 1, row, '├');
      if (window != null && overlap(window.lowMm(), window.highMm(), low)) {
        canvas.row(AXIS, row, length, '░', Ink.PLAIN);
      }
    }
    canvas.set(AXIS - 1, high + 1, '└');
    canvas.row(AXIS, high + 1, length, '─', Ink.PLAIN);
  }

  private static boolean overlap(double low, double high, double levelMm) {
    return low < levelMm + STEP_MM - 1e-6 && high > levelMm + 1e-6;
  }

  private static void entry(
      Canvas canvas, Entry entry, int column, int base, int high, Overview overview) {
    if (entry instanceof Entry.Turned turned) {
      canvas.put(
          column, high + 2, Wrap.cut("► " + Trail.brief(turned).replace("about ", "~"), CELL));
    } else if (entry instanceof Entry.Reading reading) {
      Bracket bracket = reading.bracket();
      String name = Trail.string(reading.which(), overview);
      canvas.put(column + 3, high + 2, Wrap.cut(name, CELL - 4));
      double low = bracket.noGap() ? 0 : bracket.lowMm();
      double top = bracket.beyondGauge() ? (base + high) * STEP_MM : bracket.highMm();
      for (int i = 0; i < high; i++) {
        if (overlap(low, top, (base + i) * STEP_MM)) {
          canvas.put(column + 3, high - i, "████");
        }
      }
      if (bracket.noGap() && top <= 0) {
        canvas.put(column + 3, high, "touches");
      }
    }
  }
}
