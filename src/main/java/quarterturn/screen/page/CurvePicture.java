package quarterturn.screen.page;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import quarterturn.craft.Scale;
import quarterturn.craft.Window;
import quarterturn.procedure.kind.Kind;
import quarterturn.procedure.kind.Which;
import quarterturn.screen.terminal.Canvas;
import quarterturn.screen.terminal.Ink;
import quarterturn.screen.terminal.Wrap;
import quarterturn.session.Overview;
import quarterturn.session.Overview.Entry;
import quarterturn.unit.Bracket;

/**
 * Draws the neck's curve under a straight string, with the last reading. Its depth is always drawn
 * to the same scale, so that two readings look as different as they are.
 */
final class CurvePicture {
  /** Depth of a row, and length of the neck in a cell, which is about half as wide as high. */
  static final double ROW_MM = 0.2;

  private static final double CELL_MM = 15;
  private static final long TIMES = Math.round(2 * CELL_MM / ROW_MM);

  /**
   * Rows without those of the curve: a title, the string and its frets; words where there is room.
   */
  private static final int AROUND = 3;

  private static final int LEAST = AROUND + 4;
  private static final int LEAST_WORDS = 30;
  private static final int LEAST_SCALE = 30;
  private static final int WIDEST_SCALE = 60;
  private static final int GAP = 3;

  private CurvePicture() {}

  /**
   * The curve at the left and the scale at the right; one of them in little room. Null where
   * nothing fits.
   */
  static @Nullable Canvas draw(Overview overview, int width, int rows) {
    List<ScaleBar.Mark> marks = marks(overview);
    Kind kind = overview.kind();
    Canvas curve = kind == null || rows < LEAST ? null : curve(overview, kind, rows);
    if (curve == null || curve.width() > width) {
      return scale(overview, marks, width, rows);
    }
    Canvas canvas = new Canvas(width, curve.height());
    canvas.paste(0, 0, curve);
    String title = "From the side, drawn about " + TIMES + " times as deep as it is";
    canvas.put(0, 0, Wrap.cut(title, width), Ink.STRONG);
    int left = width - curve.width() - GAP;
    if (left >= LEAST_SCALE) {
      Canvas scale = scale(overview, marks, left, Math.max(curve.height(), rows) - 1);
      if (scale != null) {
        Canvas both = new Canvas(width, Math.max(canvas.height(), scale.height() + 1));
        both.paste(0, 0, canvas);
        both.paste(curve.width() + GAP, 1, scale);
        return both;
      }
    }
    return canvas;
  }

  /** The scale, without its words where there is little room; null where it does not fit. */
  private static @Nullable Canvas scale(
      Overview overview, List<ScaleBar.Mark> marks, int width, int rows) {
    int bare = ScaleBar.bareRows(marks.size());
    if (rows < bare || width < LEAST_SCALE) {
      return null;
    }
    Canvas whole = ScaleBar.draw(overview.window(), marks, Math.min(width, WIDEST_SCALE));
    if (rows >= whole.height()) {
      return whole;
    }
    Canvas cut = new Canvas(whole.width(), bare);
    cut.paste(0, 0, whole);
    return cut;
  }

  private static List<ScaleBar.Mark> marks(Overview overview) {
    List<ScaleBar.Mark> out = new ArrayList<>();
    for (Which which : Which.values()) {
      Entry.@Nullable Reading reading = Latest.of(overview.trail(), which);
      if (reading != null) {
        String name = Trail.string(which, overview);
        out.add(new ScaleBar.Mark(name + (reading.stale() ? " (stale)" : ""), reading.bracket()));
      }
    }
    return out;
  }

  /** The curve alone, below an empty row for its title. */
  private static Canvas curve(Overview overview, Kind kind, int rows) {
    Scale scale = new Scale(kind.scale());
    double length = scale.fretMm(kind.jointFret()) - scale.fretMm(1);
    int width = (int) Math.round(length / CELL_MM);
    Entry.@Nullable Reading latest = Latest.of(overview.trail());
    Bracket reading = latest == null ? null : latest.bracket();
    Window window = overview.window();
    double depth = depth(window, reading);
    double most = Math.max(depth, window == null ? 0 : window.highMm());
    int room = rows - AROUND;
    boolean deeper = depth > room * ROW_MM;
    int deepest = deeper ? room - 1 : Math.min(room, 1 + (int) (most / ROW_MM));
    Canvas canvas =
        new Canvas(Math.max(width, LEAST_WORDS), AROUND + deepest + (deepest < room ? 1 : 0));
    canvas.row(0, 1, width, '═', Ink.PLAIN);
    for (int c = 0; c < width; c++) {
      double x = c / (double) (width - 1);
      double y = 4 * depth * x * (1 - x) / ROW_MM + 1e-9;
      int row = (int) Math.floor(y);
      if (row < deepest) {
        canvas.set(c, 2 + row, "‾─_".charAt((int) (3 * (y - row))));
      }
    }
    int below = deepest + 2;
    String joint = "fret " + kind.jointFret();
    canvas.put(0, below, "fret 1");
    canvas.put(Math.max(width - Canvas.cells(joint), 8), below, joint);
    canvas.put(0, below + 1, deeper ? "deeper than there is room for" : words(reading, depth));
    return canvas;
  }

  private static double depth(@Nullable Window window, @Nullable Bracket reading) {
    if (reading == null) {
      return window == null ? 0 : window.middleMm();
    }
    return reading.noGap() && reading.highMm() <= 0 ? 0 : Math.max(0, reading.middleMm());
  }

  private static String words(@Nullable Bracket reading, double depth) {
    if (reading == null) {
      return "the curve that is looked for";
    }
    return depth > 0 ? "═ string; the gap is the curve" : "no gap: straight or bent back";
  }
}
