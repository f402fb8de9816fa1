package quarterturn.screen.page;

import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import quarterturn.screen.terminal.Canvas;
import quarterturn.screen.terminal.Ink;

/**
 * Draws a reading from the side: where each hand is on frets to scale, and between string and fret
 * a gauge that passes and one that lifts it.
 */
final class HoldPicture {
  private static final String[] GAUGES = {
    "PASSES        LIFTS: pushed up",
    "string still    ╔══════╗      ",
    "════════════  ══╝██████╚══════",
    "   ██████       ██████   gauge",
    "─────┴──────  ────┴───────fret"
  };
  private static final int ROWS = GAUGES.length;
  private static final int LEAST = 44;
  private static final int WIDEST = 76;
  private static final int GAP = 2;

  private HoldPicture() {}

  /**
   * The hands in five rows and the gauges beside or below them, or the hands alone; null where it
   * does not fit.
   *
   * @param held frets where the string is held down, the lower of two by a capo
   * @param readAt fret over which the gap is read, 0 for none
   * @param gauge whether the gap is read with a gauge
   * @param frets how many the neck has
   */
  static @Nullable Canvas draw(
      List<Integer> held, int readAt, boolean gauge, int frets, int width, int rows) {
    if (rows < ROWS || width < LEAST) {
      return null;
    }
    int last = Math.min(frets, Math.max(readAt, held.get(held.size() - 1)) + 2);
    Canvas gauges = Canvas.of(List.of(GAUGES), GAUGES[0].length(), Ink.PLAIN);
    boolean below = rows >= 2 * ROWS;
    int left = below ? 0 : Math.min(width, WIDEST + gauges.width()) - gauges.width();
    boolean beside = !below && left - GAP >= LEAST;
    Canvas canvas = new Canvas(width, gauge && below ? Math.min(rows, 2 * ROWS + 1) : ROWS);
    int wide = gauge && beside ? left - GAP : Math.min(width, WIDEST);
    canvas.paste(0, 0, hands(held, gauge ? readAt : 0, last, wide));
    if (gauge && (beside || below)) {
      canvas.paste(left, below ? canvas.height() - ROWS : 0, gauges);
    }
    return canvas;
  }

  /** The string over the frets of a part of the neck: the board lies lower where it is not held. */
  private static Canvas hands(List<Integer> held, int readAt, int last, int wide) {
    Canvas canvas = new Canvas(wide, ROWS);
    boolean two = held.size() > 1;
    Frets frets = new Frets(two ? held.get(0) - 1 : 0, last, wide);
    int from = frets.free(frets.column(two ? held.get(0) : 0) + 2, 1);
    int to = frets.free(frets.column(held.get(held.size() - 1)) - 2, -1);
    int start = frets.first == 0 ? frets.column(0) : 0;
    canvas.row(start, 1, wide - start, '═', Ink.PLAIN);
    for (int c = start; c < wide; c++) {
      int fret = frets.at(c) ? '┴' : '─';
      canvas.set(c, c > from && c < to ? 3 : 2, c == from ? '┐' : c == to ? '┌' : fret);
    }
    canvas.set(from, 3, '└');
    canvas.set(to, 3, '┘');
    if (frets.first == 0) {
      canvas.put(0, 1, "nut ╞");
      canvas.set(start, 2, '║');
    }
    for (int fret : held) {
      int at = frets.column(fret) - 1;
      boolean capo = two && fret == held.get(0);
      String hand = capo ? "▼ capo" : "pressing hand ▼";
      canvas.set(at, 1, '●', Ink.STRONG);
      canvas.put(capo ? at : Math.max(0, at + 1 - hand.length()), 0, hand, Ink.STRONG);
      number(canvas, frets.under(fret), "" + fret, Ink.STRONG);
    }
    if (readAt > 0) {
      int at = frets.column(readAt);
      canvas.put(at - 1, 2, "███", Ink.STRONG);
      String hand = " gauge hand";
      int below = frets.under(readAt);
      if (!number(canvas, below, readAt + hand, Ink.STRONG)) {
        number(canvas, below - hand.length(), hand.strip() + " " + readAt, Ink.STRONG);
      }
    }
    for (int fret = frets.first + 1; fret <= last; fret++) {
      number(canvas, frets.under(fret), "" + fret, Ink.PLAIN);
    }
    return canvas;
  }

  /** Writes below a fret; false where something is written there. */
  private static boolean number(Canvas canvas, int at, String text, Ink ink) {
    boolean free = at >= 0 && at + text.length() <= canvas.width();
    for (int c = at - 1; free && c <= at + text.length(); c++) {
      free = c < 0 || c >= canvas.width() || canvas.at(c, ROWS - 1) == ' ';
    }
    if (free) {
      canvas.put(at, ROWS - 1, text, ink);
    }
    return free;
  }

  /** The columns of frets {@code first} (0 is the nut) to {@code last} on a board this wide. */
  record Frets(int first, int last, int width) {
    /** In equal temperament fret k is at 1 - 2^(-k/12) of the scale from the nut. */
    int column(int fret) {
      double start = Math.pow(2, -first / 12.0);
      double place = start - Math.pow(2, -fret / 12.0);
      return 4 + (int) Math.round(place / (start - Math.pow(2, -last / 12.0)) * (width - 6));
    }

    /** The column where a fret's number begins. */
    int under(int fret) {
      return column(fret) - (fret > 9 ? 1 : 0);
    }

    boolean at(int column) {
      return IntStream.rangeClosed(first + 1, last).anyMatch(fret -> column(fret) == column);
    }

    /** The column, or the next one that way where a fret stands. */
    int free(int column, int way) {
      return at(column) ? column + way : column;
    }
  }
}
