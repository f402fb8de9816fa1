package quarterturn.report;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import quarterturn.craft.Window;
import quarterturn.unit.Dates;
import quarterturn.unit.Decimals;

/**
 * Readings over time in plain characters, with the rod's turns on the time axis.
 *
 * <p>A reading between two leaves fills every line of its range; an open one is marked at its known
 * bound.
 */
final class TimePlot {
  /** Most columns that any line of a plot takes. */
  static final int COLUMNS = 78;

  static final char READ = 'o';
  static final char OTHER = 'x';
  static final char UNDER = 'v';
  static final char OVER = '^';
  static final char TIGHTENED = 'T';
  static final char LOOSENED = 'L';
  static final char BOTH = '*';
  static final char IN_WINDOW = '#';

  private static final int MOST_ROWS = 16;
  private static final int LEAST_ROWS = 3;
  private static final int LABEL = 7;
  private static final int WIDTH = COLUMNS - LABEL - 1;
  private static final double SLACK = 1e-6;
  private static final double[] STEPS = {
    0.05, 0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 50, 100, 200, 500, 1000
  };

  private final List<ReadingHistory.Point> points;
  private final @Nullable Window window;
  private final Instant from;
  private final Instant to;
  private final double step;
  private final int lowest;
  private final int highest;

  /**
   * A plot of readings of one quantity.
   *
   * @param points at least one reading, all of one quantity
   * @param window the quantity's window, or null
   * @param from the time at the left end
   * @param to the time at the right end
   */
  TimePlot(List<ReadingHistory.Point> points, @Nullable Window window, Instant from, Instant to) {
    this.points = points;
    this.window = window;
    this.from = from;
    this.to = to;
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (ReadingHistory.Point point : points) {
      // One of the bounds is finite.
      low = Math.min(low, Double.isFinite(point.low()) ? point.low() : point.high());
      high = Math.max(high, Double.isFinite(point.high()) ? point.high() : point.low());
    }
    if (window != null) {
      low = Math.min(low, window.lowMm());
      high = Math.max(high, window.highMm());
    }
    this.step = step(low, high, points.get(0).unit().equals("mm") ? 0.05 : 1);
    int bottom = bottom(low, step);
    int top = top(high, step);
    this.highest = Math.max(top, bottom + LEAST_ROWS - 1);
    this.lowest = bottom;
  }

  private static double step(double low, double high, double least) {
    for (double step : STEPS) {
      if (step >= least && top(high, step) - bottom(low, step) < MOST_ROWS) {
        return step;
      }
    }
    return STEPS[STEPS.length - 1];
  }

  private static int bottom(double low, double step) {
    return (int) Math.floor(low / step + SLACK);
  }

  private static int top(double high, double step) {
    return (int) Math.ceil(high / step - SLACK);
  }

  /** The plot without its title. */
  List<String> lines(List<ReadingHistory.Move> moves, Dates dates) {
    char[][] cells = new char[highest - lowest + 1][WIDTH];
    for (char[] row : cells) {
      Arrays.fill(row, ' ');
    }
    // The lowest string's marks come last, since they count for most.
    points.stream().filter(p -> !p.lowest()).forEach(p -> mark(cells, p));
    points.stream().filter(ReadingHistory.Point::lowest).forEach(p -> mark(cells, p));
    List<String> lines = new ArrayList<>();
    for (int row = highest; row >= lowest; row--) {
      String text = new String(cells[row - lowest]);
      lines.add((label(row) + side(row) + text).stripTrailing());
    }
    lines.add(" ".repeat(LABEL) + "+" + new String(axis(moves)));
    lines.add(ends(dates));
    return lines;
  }

  private String label(int row) {
    String text = Decimals.print(row * step, Decimals.of(step));
    return " ".repeat(Math.max(0, LABEL - 1 - text.length())) + text + " ";
  }

  private char side(int row) {
    double value = row * step;
    boolean in =
        window != null && value >= window.lowMm() - SLACK && value <= window.highMm() + SLACK;
    return in ? IN_WINDOW : '|';
  }

  private void mark(char[][] cells, ReadingHistory.Point point) {
    int column = column(point.at());
    if (Double.isInfinite(point.low())) {
      cells[row(point.high()) - lowest][column] = UNDER;
    } else if (Double.isInfinite(point.high())) {
      cells[row(point.low()) - lowest][column] = OVER;
    } else {
      char mark = point.lowest() ? READ : OTHER;
      int first = (int) Math.ceil(point.low() / step - SLACK);
      int last = (int) Math.floor(point.high() / step + SLACK);
      if (first > last) {
        first = row((point.low() + point.high()) / 2);
        last = first;
      }
      for (int row = first; row <= last; row++) {
        cells[row - lowest][column] = mark;
      }
    }
  }

  private int row(double value) {
    return (int) Math.max(lowest, Math.min(highest, Math.round(value / step)));
  }

  private int column(Instant at) {
    double whole = Duration.between(from, to).toSeconds();
    double part = Duration.between(from, at).toSeconds();
    return whole <= 0 ? 0 : (int) Math.round(Math.min(1, Math.max(0, part / whole)) * (WIDTH - 1));
  }

  private char[] axis(List<ReadingHistory.Move> moves) {
    char[] axis = new char[WIDTH];
    Arrays.fill(axis, '-');
    for (ReadingHistory.Move move : moves) {
      char mark = move.turn().turns() > 0 ? TIGHTENED : LOOSENED;
      int column = column(move.at());
      axis[column] = axis[column] == '-' || axis[column] == mark ? mark : BOTH;
    }
    return axis;
  }

  private String ends(Dates dates) {
    boolean close = Duration.between(from, to).compareTo(Duration.ofDays(2)) < 0;
    String left = close ? dates.minute(from) : dates.day(from);
    String right = close ? dates.minute(to) : dates.day(to);
    String start = " ".repeat(LABEL + 1) + left;
    return left.equals(right)
        ? start
        : start + " ".repeat(COLUMNS - start.length() - right.length()) + right;
  }
}
