package quarterturn.screen.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import quarterturn.screen.terminal.Canvas;
import quarterturn.screen.terminal.Ink;
import quarterturn.session.Prompt;
import quarterturn.unit.Decimals;

/**
 * Draws a rod turn as the face of a clock, seen along the neck from the end of the rod nut: a
 * column beside the text, where hazards and words can't push it away.
 */
final class DialPicture {
  private static final int LEAST = 2;
  private static final int LARGEST = 7;

  /** Smallest radius with room for all the hours. */
  private static final int ALL_HOURS = 5;

  /** Columns at each side of the dial, for the word at the end of the turn. */
  private static final int MARGIN = 8;

  private DialPicture() {}

  /** Direction and amount, the dial, and its angle in words; null where that does not fit. */
  static @Nullable Canvas draw(Prompt.TurnRod turn, int width, int rows) {
    for (int radius = LARGEST; radius >= LEAST; radius--) {
      Canvas drawn = draw(turn, radius, width, rows);
      if (drawn != null) {
        return drawn;
      }
    }
    return null;
  }

  private static @Nullable Canvas draw(Prompt.TurnRod turn, int radius, int width, int rows) {
    Canvas dial = dial(turn.turn().degrees(), turn.back(), radius);
    String hours = turn.back() ? "back to 12" : turn.turn().clock();
    List<String> words =
        Stream.of(angle(turn), hours, "facing the truss rod nut's end")
            .filter(line -> !line.isEmpty())
            .toList();
    int shown = Math.min(words.size(), rows - 1 - dial.height());
    int wide =
        Math.max(
            dial.width(),
            1 + words.stream().limit(Math.max(0, shown)).mapToInt(Canvas::cells).max().orElse(0));
    if (shown < 2 || wide > width) {
      return null;
    }
    Canvas canvas = new Canvas(wide, 1 + dial.height() + shown);
    String what = turn.direction().toUpperCase(Locale.ROOT) + "  " + turn.turn();
    centred(canvas, 0, " " + what + " ", Ink.NOW);
    canvas.paste((wide - dial.width()) / 2, 1, dial);
    for (int i = 0; i < shown; i++) {
      centred(canvas, 1 + dial.height() + i, words.get(i), Ink.PLAIN);
    }
    return canvas;
  }

  private static void centred(Canvas canvas, int row, String text, Ink ink) {
    canvas.put((canvas.width() - Canvas.cells(text)) / 2, row, text, ink);
  }

  /**
   * The dial alone, with the hours of a clock around it. The key points up at first or, where it is
   * turned back, at last.
   *
   * @param degrees plus clockwise, as {@link quarterturn.unit.Turn#sense} says of tightening
   */
  static Canvas dial(double degrees, boolean back, int radius) {
    int middle = 2 * radius + MARGIN;
    int row = radius > LEAST ? radius + 1 : radius;
    Canvas canvas = new Canvas(2 * middle + 1, row + radius + 1);
    for (int a = 0; a < 360; a += 3) {
      plot(canvas, middle, row, a, radius, '·');
    }
    double aside = back ? -degrees : degrees;
    int side = aside < 0 ? -1 : 1;
    for (double a = 0; a < Math.abs(degrees); a += 2) {
      plot(canvas, middle, row, side * a, radius, '■');
    }
    for (int r = 1; r < radius; r++) {
      plot(canvas, middle, row, 0, r, '│');
    }
    for (double r = 1; r < radius; r += 0.5) {
      plot(canvas, middle, row, aside, r, '•');
    }
    hours(canvas, middle, row, radius);
    canvas.put(middle - 1, row, "(○)", Ink.STRONG);
    canvas.put(middle, row - radius - 1, back ? "▼ end" : "▼ start", Ink.STRONG);
    int column = column(middle, aside, radius);
    int at = row(row, aside, radius);
    String word = back ? "start" : "end";
    canvas.put(
        side > 0 ? column + 1 : column - 1 - word.length(), at, side > 0 ? " " + word : word + " ");
    if (back) {
      canvas.set(middle, row - radius, degrees < 0 ? '◄' : '►', Ink.STRONG);
    } else {
      canvas.set(column, at, arrow(degrees), Ink.STRONG);
    }
    return canvas;
  }

  /** Writes the hours on the rim: all where there is room, else every third. */
  private static void hours(Canvas canvas, int middle, int row, int radius) {
    int every = radius < ALL_HOURS ? 3 : 1;
    for (int hour = every; hour <= 12; hour += every) {
      int column = column(middle, hour * 30.0, radius);
      canvas.put(hour > 9 ? column - 1 : column, row(row, hour * 30.0, radius), "" + hour);
    }
  }

  private static void plot(
      Canvas canvas, int middle, int row, double degrees, double radius, int c) {
    canvas.set(column(middle, degrees, radius), row(row, degrees, radius), c);
  }

  private static int column(int middle, double degrees, double radius) {
    return middle + (int) Math.round(2 * radius * Math.sin(Math.toRadians(degrees)));
  }

  private static int row(int middle, double degrees, double radius) {
    return middle - (int) Math.round(radius * Math.cos(Math.toRadians(degrees)));
  }

  /** The arrow character for the direction in which the key's end moves last. */
  private static int arrow(double degrees) {
    double across = Math.cos(Math.toRadians(degrees)) * Math.signum(degrees);
    if (Math.abs(across) >= 0.7) {
      return across > 0 ? '►' : '◄';
    }
    double down = Math.sin(Math.toRadians(degrees)) * Math.signum(degrees);
    return down > 0 ? '▼' : '▲';
  }

  /** A turn's angle in words: "45 degrees clockwise". */
  private static String angle(Prompt.TurnRod turn) {
    String degrees = Decimals.print(turn.turn().size().degrees(), 1).replace(".0", "");
    return degrees + " degrees " + turn.turn().sense();
  }

  /** Lines on the limit of the turn and the reading to expect after it. */
  static List<Line> facts(Prompt.TurnRod turn, int width) {
    List<Line> out = new ArrayList<>();
    out.addAll(Line.wrapped("Limit: " + turn.limit() + " per reading", width));
    Prompt.Expected expected = turn.expected();
    if (expected != null) {
      out.addAll(Line.wrapped("Then expect " + range(expected), width));
    }
    return out;
  }

  private static String range(Prompt.Expected expected) {
    String high = Decimals.print(expected.highMm(), 2) + " mm";
    return Double.isInfinite(expected.lowMm())
        ? "at most " + high + "; it may still touch"
        : Decimals.print(Math.max(0, expected.lowMm()), 2) + " to " + high;
  }
}
