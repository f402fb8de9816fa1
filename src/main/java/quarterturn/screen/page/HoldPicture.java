package quarterturn.screen.page;

import java.util.List;
import org.jspecify.annotations.Nullable;
import quarterturn.screen.terminal.Canvas;
import quarterturn.screen.terminal.Ink;
import quarterturn.screen.terminal.Wrap;

/** Draws where to hold the string and where to read the gap, on frets to scale. */
final class HoldPicture {
  private static final int SLIM = 3;
  private static final int ROWS = 6;
  private static final int WORDS = 7;
  private static final int WIDEST = 110;

  private HoldPicture() {}

  /**
   * The picture in six or seven rows, or three with the string alone; null where it does not fit.
   *
   * @param held frets where the string is held down
   * @param readAt fret over which the gap is read, 0 for none
   * @param string the string's note, or null
   * @param frets how many the neck has
   */
  static @Nullable Canvas draw(
      List<Integer> held, int readAt, @Nullable String string, int frets, int width, int rows) {
    if (rows < SLIM || width < 50) {
      return null;
    }
    boolean slim = rows < ROWS;
    int last = Math.min(frets, held.stream().mapToInt(f -> f).max().orElse(readAt) + 3);
    int wide = Math.min(width, WIDEST);
    Canvas canvas = new Canvas(width, slim ? SLIM : rows >= WORDS ? WORDS : ROWS);
    int middle = slim ? 1 : 3;
    board(canvas, middle, last, wide);
    for (int fret : held) {
      int at = column(fret, last, wide);
      label(canvas, at - 1, 0, "hold");
      canvas.set(at - 1, middle, '●', Ink.STRONG);
      if (!slim) {
        canvas.set(at - 1, 1, '▼');
      }
    }
    if (readAt > 0) {
      int at = column(readAt, last, wide);
      label(canvas, at, 0, "read here");
      if (!slim) {
        canvas.set(at, 1, '▼');
        canvas.set(at, middle - 1, '█');
        canvas.set(at, middle + 1, '█');
      }
      canvas.set(at, middle, '█');
    }
    numbers(canvas, held, readAt, last, wide, slim ? 2 : 5);
    if (rows >= WORDS) {
      canvas.put(0, 6, Wrap.cut(words(held, readAt, string), width));
    }
    return canvas;
  }

  /**
   * Column of a fret: in equal temperament fret k is at 1 - 2^(-k/12) of the scale from the nut.
   */
  static int column(int fret, int last, int width) {
    double place = 1 - Math.pow(2, -fret / 12.0);
    double end = 1 - Math.pow(2, -last / 12.0);
    return 4 + (int) Math.round(place / end * (width - 7));
  }

  private static void board(Canvas canvas, int middle, int last, int wide) {
    int from = column(0, last, wide);
    boolean edges = middle > 1;
    canvas.row(from, middle, wide - from, '═', Ink.PLAIN);
    if (edges) {
      canvas.row(from, middle - 1, wide - from, '─', Ink.PLAIN);
      canvas.row(from, middle + 1, wide - from, '─', Ink.PLAIN);
    }
    for (int fret = 0; fret <= last; fret++) {
      int at = column(fret, last, wide);
      canvas.set(at, middle, fret == 0 ? '╞' : '╪');
      if (edges) {
        canvas.set(at, middle - 1, fret == 0 ? '┌' : '┬');
        canvas.set(at, middle + 1, fret == 0 ? '└' : '┴');
      }
    }
    canvas.put(0, middle, "nut");
  }

  /** Draws the numbers of the frets held and read over, and of others where there is room. */
  private static void numbers(
      Canvas canvas, List<Integer> held, int readAt, int last, int wide, int row) {
    boolean[] taken = new boolean[canvas.width() + 4];
    for (int pass = 0; pass < 2; pass++) {
      for (int fret = 1; fret <= last; fret++) {
        boolean matters = fret == readAt || held.contains(fret);
        String number = String.valueOf(fret);
        int at = column(fret, last, wide) - number.length() / 2;
        boolean free = !taken[Math.max(0, at - 1)] && !taken[at] && !taken[at + number.length()];
        if (matters == (pass == 0) && free) {
          canvas.put(at, row, number, matters ? Ink.STRONG : Ink.PLAIN);
          for (int i = 0; i < number.length(); i++) {
            taken[at + i] = true;
          }
        }
      }
    }
  }

  private static void label(Canvas canvas, int at, int row, String word) {
    int from = Math.max(0, Math.min(at - word.length() / 2, canvas.width() - word.length()));
    canvas.put(from, row, word, Ink.STRONG);
  }

  private static String words(List<Integer> held, int readAt, @Nullable String string) {
    String which = string == null ? "the string" : "string " + string;
    String holds = String.join(" and ", held.stream().map(f -> "fret " + f).toList());
    return "Hold "
        + which
        + " down behind "
        + holds
        + (readAt > 0 ? "; read the gap over fret " + readAt + "." : ".");
  }
}
