package quarterturn.report.sheet;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import quarterturn.craft.Window;
import quarterturn.procedure.kind.Quantity;
import quarterturn.procedure.kind.Which;
import quarterturn.report.TrailLine;
import quarterturn.session.Overview.Entry;
import quarterturn.unit.Bracket;
import quarterturn.unit.Dates;
import quarterturn.unit.Decimals;

/**
 * Relief on the lowest string as a drawing: a bar from bound to bound for each reading, a line for
 * each turn, the window as a band. Events are evenly spaced in the order of time, since minutes and
 * days would not fit one scale.
 */
final class ReliefPlot {
  private static final int WIDE = 720;
  private static final int HIGH = 300;
  private static final int LEFT = 56;
  private static final int RIGHT = 12;
  private static final int TOP = 16;
  private static final int BOTTOM = 52;

  /** Most two-line labels that fit beside each other. */
  private static final int LABELS = 12;

  private static final double HALF_BAR = 5;

  /** A reading or a turn in the drawing. */
  private record Point(Instant at, @Nullable Bracket bracket, Sheet.@Nullable Move move) {}

  private final Dates dates;
  private final List<Point> points;
  private final @Nullable Window window;
  private final String string;
  private final double most;
  private final StringBuilder out = new StringBuilder();

  private ReliefPlot(
      Dates dates, List<Point> points, @Nullable Window window, String string, double most) {
    this.dates = dates;
    this.points = points;
    this.window = window;
    this.string = string;
    this.most = most;
  }

  /** The drawing as an {@code svg} element, or empty where there is nothing to draw. */
  static String of(Sheet sheet, Dates dates) {
    List<Point> points = new ArrayList<>();
    Window window = null;
    String string = "";
    double most = 0.1;
    for (Sheet.Taken taken : sheet.readings()) {
      Bracket bracket = taken.read().bracket();
      if (bracket != null
          && taken.read().quantity() == Quantity.RELIEF
          && taken.read().which() != Which.HIGHEST
          && (string.isEmpty() || string.equals(SheetRows.string(taken.read())))) {
        string = SheetRows.string(taken.read());
        window = taken.window() == null ? window : taken.window();
        most = Math.max(most, bracket.beyondGauge() ? bracket.lowMm() : bracket.highMm());
        points.add(new Point(taken.read().at(), bracket, null));
      }
    }
    if (points.isEmpty()) {
      return "";
    }
    sheet.rod().moves().stream()
        .filter(m -> m.turn().turns() != 0)
        .forEach(m -> points.add(new Point(m.at(), null, m)));
    points.sort(Comparator.comparing(Point::at));
    most = 1.15 * Math.max(most, window == null ? 0 : window.highMm());
    return new ReliefPlot(dates, points, window, string, most).draw();
  }

  private String draw() {
    put(
        "<svg viewBox=\"0 0 %d %d\" role=\"img\" aria-labelledby=\"plot-name plot-words\"",
        WIDE, HIGH);
    out.append(" xmlns=\"http://www.w3.org/2000/svg\">\n");
    out.append("<title id=\"plot-name\">Relief on the string ").append(SheetHtml.escape(string));
    out.append(", in mm</title>\n<desc id=\"plot-words\">").append(SheetHtml.escape(words()));
    out.append("</desc>\n");
    if (window != null) {
      double top = y(window.highMm());
      put("<rect class=\"window\" x=\"%d\" y=\"%.1f\"", LEFT, top);
      put(" width=\"%d\" height=\"%.1f\"/>\n", WIDE - LEFT - RIGHT, y(window.lowMm()) - top);
    }
    scale();
    for (int i = 0; i < points.size(); i++) {
      mark(i);
    }
    return out.append("</svg>\n").toString();
  }

  private void scale() {
    put("<path class=\"axis\" d=\"M%d %dV%dH%d\"/>\n", LEFT, TOP, HIGH - BOTTOM, WIDE - RIGHT);
    double step = most > 1.2 ? 0.5 : most > 0.5 ? 0.2 : 0.1;
    for (int i = 0; i * step <= most; i++) {
      double mm = i * step;
      put("<path class=\"axis\" d=\"M%d %.1fh-5\"/>", LEFT, y(mm));
      put("<text x=\"%d\" y=\"%.1f\" text-anchor=\"end\">", LEFT - 8, y(mm) + 4);
      out.append(Decimals.print(mm, 1)).append("</text>\n");
    }
  }

  private void mark(int i) {
    double x = x(i);
    Bracket bracket = points.get(i).bracket();
    Sheet.Move move = points.get(i).move();
    if (bracket != null) {
      double top = y(bracket.beyondGauge() ? most : bracket.highMm());
      double bottom = y(bracket.noGap() ? 0 : bracket.lowMm());
      put("<rect class=\"reading\" x=\"%.1f\" y=\"%.1f\"", x - HALF_BAR, top - 1);
      put(" width=\"%.1f\" height=\"%.1f\"/>\n", 2 * HALF_BAR, Math.max(2, bottom - top + 2));
      if (bracket.noGap() && points.size() <= LABELS) {
        put("<text x=\"%.1f\" y=\"%.1f\" text-anchor=\"middle\">touches</text>\n", x, top - 6);
      }
    } else if (move != null) {
      put("<path class=\"turn\" d=\"M%.1f %dV%d\"/>", x, TOP, HIGH - BOTTOM);
      put("<text x=\"%.1f\" y=\"%d\" text-anchor=\"middle\">", x, TOP - 4);
      out.append(move.turn().turns() > 0 ? "+" : "\u2212");
      out.append(move.turn().toString().replaceAll(" turns?$", "")).append("</text>\n");
    }
    if (i % (1 + (points.size() - 1) / LABELS) == 0) {
      String minute = dates.minute(points.get(i).at());
      put("<text x=\"%.1f\" y=\"%d\" text-anchor=\"middle\">", x, HIGH - BOTTOM + 18);
      out.append(minute, 5, 10).append("</text>");
      put("<text x=\"%.1f\" y=\"%d\" text-anchor=\"middle\">", x, HIGH - BOTTOM + 34);
      out.append(minute, 11, 16).append("</text>\n");
    }
  }

  /** A text alternative for people who can't see the drawing. */
  private String words() {
    List<Entry> trail = new ArrayList<>();
    for (Point point : points) {
      Sheet.Move move = point.move();
      if (point.bracket() != null) {
        trail.add(new Entry.Reading(point.at(), Which.LOWEST, point.bracket(), false));
      } else if (move != null) {
        trail.add(new Entry.Turned(move.at(), move.turn(), move.feel(), move.sure()));
      }
    }
    String band = window == null ? "" : " The range is " + window + ".";
    return "Readings and turns, oldest first, in mm: " + TrailLine.of(trail) + "." + band;
  }

  private double x(int i) {
    double slot = (double) (WIDE - LEFT - RIGHT) / points.size();
    return LEFT + slot * (i + 0.5);
  }

  private double y(double mm) {
    double share = Math.max(0, Math.min(1, mm / most));
    return HIGH - BOTTOM - share * (HIGH - BOTTOM - TOP);
  }

  private void put(String format, Object... values) {
    out.append(String.format(Locale.ROOT, format, values));
  }
}
