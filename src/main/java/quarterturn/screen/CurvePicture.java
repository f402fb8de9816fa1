package quarterturn.screen;

import org.jspecify.annotations.Nullable;
import quarterturn.craft.Window;
import quarterturn.procedure.Kind;
import quarterturn.session.Overview;
import quarterturn.session.Overview.Entry;
import quarterturn.unit.Bracket;

/** The neck's curve under a straight string, and where its reading falls. */
final class CurvePicture {
  private static final int NARROWEST = 66;

  private CurvePicture() {}

  /** Curve to the left, scale to the right. */
  static @Nullable Canvas draw(Overview overview, int width, int rows) {
    if (rows < ScaleBar.ROWS || width < 50) {
      return null;
    }
    Entry.@Nullable Reading latest = Latest.of(overview.trail());
    Bracket reading = latest == null ? null : latest.bracket();
    boolean beside = width >= NARROWEST;
    int scale = beside ? Math.min(44, width * 3 / 5) : width;
    int curve = beside ? Math.min(56, width - scale - 4) : width;
    if (!beside && rows < ScaleBar.ROWS + 7) {
      return ScaleBar.draw(overview.window(), reading, scale);
    }
    int high = Math.min(beside ? rows : rows - ScaleBar.ROWS - 1, 9);
    Canvas canvas =
        new Canvas(width, beside ? Math.max(high, ScaleBar.ROWS) : high + ScaleBar.ROWS + 1);
    canvas.paste(0, 0, curve(overview.kind(), overview.window(), reading, curve, high));
    int column = beside ? curve + 4 : 0;
    canvas.paste(column, beside ? 0 : high + 1, ScaleBar.draw(overview.window(), reading, scale));
    return canvas;
  }

  /** The curve alone, a few rows deep whatever its size. */
  static Canvas curve(
      @Nullable Kind kind,
      @Nullable Window window,
      @Nullable Bracket reading,
      int width,
      int rows) {
    Canvas canvas = new Canvas(width, rows);
    canvas.put(0, 0, Wrap.cut("Neck from the side, drawn larger than life", width), Ink.STRONG);
    boolean flat = reading != null && reading.noGap() && reading.highMm() <= 0;
    double gap = flat ? 0 : size(window, reading);
    double most = Math.max(gap, window == null ? 0.5 : window.highMm());
    int deepest = rows - 4;
    canvas.row(0, 1, width, '═', Ink.PLAIN);
    double depth = gap / most * deepest;
    for (int c = 0; c < width; c++) {
      double x = c / (double) (width - 1);
      double y = 4 * depth * x * (1 - x);
      int row = (int) Math.floor(y);
      double rest = y - row;
      canvas.set(c, 2 + row, rest < 0.34 ? '‾' : rest < 0.67 ? '─' : '_');
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
    return flat ? "the string touches: straight or bent back" : "the gap is the curve of the neck";
  }
}
