package quarterturn.screen.page;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import quarterturn.craft.Window;
import quarterturn.procedure.kind.Kind;
import quarterturn.procedure.kind.Which;
import quarterturn.screen.terminal.Canvas;
import quarterturn.screen.terminal.Ink;
import quarterturn.screen.terminal.Wrap;
import quarterturn.session.Overview;
import quarterturn.session.Overview.Entry;
import quarterturn.unit.Bracket;

/** Draws the neck's curve under a straight string, with the last reading. */
final class CurvePicture {
  private static final int NARROWEST = 66;
  private static final int HIGHEST = 13;

  private CurvePicture() {}

  /**
   * The curve at the left and the scale at the right; only the scale, without words, in little
   * room. Null where nothing fits.
   */
  static @Nullable Canvas draw(Overview overview, int width, int rows) {
    List<ScaleBar.Mark> marks = marks(overview);
    int least = ScaleBar.rows(marks.size());
    int bare = ScaleBar.bareRows(marks.size());
    if (rows < bare || width < 50) {
      return null;
    }
    if (rows < least) {
      Canvas cut = new Canvas(Math.min(width, 60), bare);
      cut.paste(0, 0, ScaleBar.draw(overview.window(), marks, Math.min(width, 60)));
      return cut;
    }
    if (width < NARROWEST || rows == least) {
      return ScaleBar.draw(overview.window(), marks, Math.min(width, 60));
    }
    Entry.@Nullable Reading latest = Latest.of(overview.trail());
    Bracket reading = latest == null ? null : latest.bracket();
    int high = Math.min(rows - 1, HIGHEST);
    int scale = Math.min(46, width * 4 / 7);
    int curve = Math.min(56, width - scale - 4);
    Canvas canvas = new Canvas(width, high + 1);
    canvas.put(0, 0, "The neck from the side, its curve drawn larger than life", Ink.STRONG);
    canvas.paste(0, 1, curve(overview.kind(), overview.window(), reading, curve, high));
    canvas.paste(curve + 4, 1, ScaleBar.draw(overview.window(), marks, scale));
    return canvas;
  }

  private static List<ScaleBar.Mark> marks(Overview overview) {
    List<ScaleBar.Mark> out = new ArrayList<>();
    for (Which which : Which.values()) {
      Entry.@Nullable Reading reading = Latest.of(overview.trail(), which);
      if (reading != null) {
        String name = Trail.string(which, overview.kind());
        out.add(new ScaleBar.Mark(name + (reading.stale() ? " (stale)" : ""), reading.bracket()));
      }
    }
    return out;
  }

  /** The curve alone, a few rows deep whatever the relief. */
  static Canvas curve(
      @Nullable Kind kind,
      @Nullable Window window,
      @Nullable Bracket reading,
      int width,
      int rows) {
    Canvas canvas = new Canvas(width, rows);
    boolean flat = reading != null && reading.noGap() && reading.highMm() <= 0;
    double gap = flat ? 0 : size(window, reading);
    double most = Math.max(gap, window == null ? 0.5 : window.highMm());
    int deepest = rows - 4;
    canvas.row(0, 0, width, '═', Ink.PLAIN);
    double depth = gap / most * deepest;
    for (int c = 0; c < width; c++) {
      double x = c / (double) (width - 1);
      double y = 4 * depth * x * (1 - x);
      int row = (int) Math.floor(y);
      double rest = y - row;
      canvas.set(c, 1 + row, rest < 0.34 ? '‾' : rest < 0.67 ? '─' : '_');
    }
    canvas.put(0, rows - 2, "fret 1");
    String joint = kind == null ? "body joint" : "fret " + kind.jointFret();
    canvas.put(width - Canvas.cells(joint), rows - 2, joint);
    String string = "string ═";
    canvas.put((width - Canvas.cells(string)) / 2, rows - 2, string);
    canvas.put(0, rows - 1, Wrap.cut(words(reading, flat), width));
    return canvas;
  }

  private static double size(@Nullable Window window, @Nullable Bracket reading) {
    if (reading != null) {
      return Math.max(0, reading.middleMm());
    }
    return window == null ? 0.3 : window.middleMm();
  }

  private static String words(@Nullable Bracket reading, boolean flat) {
    if (reading == null) {
      return "the curve that is looked for";
    }
    return flat ? "no gap: straight or bent back" : "the gap is the curve";
  }
}
