package quarterturn.screen.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import quarterturn.screen.terminal.Canvas;
import quarterturn.screen.terminal.Ink;
import quarterturn.session.Prompt;
import quarterturn.unit.Decimals;

/** Draws a rod turn as a dial, seen along the neck from the end of the rod nut. */
final class DialPicture {
  private static final int LEAST = 7;
  private static final int LARGEST = 7;

  private DialPicture() {}

  /** The dial with its words at the right, or null where it does not fit. */
  static @Nullable Canvas draw(
      Prompt.TurnRod turn, @Nullable String rodPlace, int width, int rows) {
    int radius = Math.min(LARGEST, (rows - 2) / 2);
    if (rows < LEAST || width < 56) {
      return null;
    }
    Canvas canvas = new Canvas(width, 2 * radius + 2);
    Canvas dial = dial(turn.turn().degrees(), radius);
    canvas.paste(0, 0, dial);
    List<Line> words = words(turn, rodPlace, width - dial.width() - 3);
    int top = Math.max(0, (canvas.height() - words.size()) / 2);
    Line.draw(canvas, dial.width() + 3, top, words, 0, canvas.height());
    return canvas;
  }

  /**
   * The dial alone, with the key pointing up at first.
   *
   * @param degrees plus clockwise, as {@link quarterturn.unit.Turn#sense} says of tightening
   */
  static Canvas dial(double degrees, int radius) {
    int wide = 2 * radius;
    int middle = wide + 8;
    int row = radius + 1;
    Canvas canvas = new Canvas(2 * wide + 17, 2 * radius + 2);
    for (int a = 0; a < 360; a += 3) {
      plot(canvas, middle, row, a, radius, '·');
    }
    int way = degrees < 0 ? -1 : 1;
    for (double a = 0; a < Math.abs(degrees); a += 2) {
      plot(canvas, middle, row, way * a, radius, '■');
    }
    for (int r = 1; r < radius; r++) {
      plot(canvas, middle, row, 0, r, '│');
    }
    for (double r = 1; r < radius; r += 0.5) {
      plot(canvas, middle, row, degrees, r, '•');
    }
    canvas.put(middle - 1, row, "(○)", Ink.STRONG);
    canvas.put(middle, 0, "▼ start", Ink.STRONG);
    double end = Math.toRadians(degrees);
    int column = middle + (int) Math.round(wide * Math.sin(end));
    int at = row - (int) Math.round(radius * Math.cos(end));
    canvas.set(column, at, arrow(degrees), Ink.STRONG);
    canvas.put(way > 0 ? column + 2 : column - 4, at, "end");
    return canvas;
  }

  private static void plot(
      Canvas canvas, int middle, int row, double degrees, double radius, int c) {
    double a = Math.toRadians(degrees);
    canvas.set(
        middle + (int) Math.round(2 * radius * Math.sin(a)),
        row - (int) Math.round(radius * Math.cos(a)),
        c);
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

  private static List<Line> words(Prompt.TurnRod turn, @Nullable String rodPlace, int width) {
    List<Line> out = new ArrayList<>();
    String what = turn.direction().toUpperCase(Locale.ROOT) + "  " + turn.turn();
    out.add(new Line(" " + what + " ", Ink.NOW, 0, "", Ink.PLAIN));
    out.addAll(Line.wrapped(angle(turn) + ", seen facing the end of the truss rod nut", width));
    if (rodPlace != null) {
      out.addAll(Line.wrapped("Truss rod nut: " + rodPlace.replace('-', ' '), width));
    }
    out.addAll(facts(turn, width));
    return out;
  }

  /** A turn's angle in words: "45 degrees clockwise". */
  static String angle(Prompt.TurnRod turn) {
    String degrees = Decimals.print(turn.turn().size().degrees(), 1).replace(".0", "");
    return degrees + " degrees " + turn.turn().sense();
  }

  /** Lines on the limit of the turn and the reading to expect after it. */
  static List<Line> facts(Prompt.TurnRod turn, int width) {
    List<Line> out = new ArrayList<>();
    out.addAll(Line.wrapped("Limit: " + turn.limit() + " between two readings", width));
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
