package quarterturn.screen.terminal;

import java.util.Arrays;
import java.util.List;
import org.jline.utils.WCWidth;
import quarterturn.unit.Printable;

/**
 * A grid of characters, each with an ink, rows and columns counted from zero. Anything drawn
 * outside is cut off. Control characters are replaced, so that nothing drawn can steer a terminal.
 */
public final class Canvas {
  /** The value of the cell right of a character that is two cells wide. */
  public static final int TAIL = 0;

  private final int width;
  private final int height;
  private final int[] cells;
  private final Ink[] inks;
  private int cursorColumn = -1;
  private int cursorRow = -1;

  public Canvas(int width, int height) {
    this.width = Math.max(0, width);
    this.height = Math.max(0, height);
    cells = new int[this.width * this.height];
    inks = new Ink[cells.length];
    Arrays.fill(cells, ' ');
    Arrays.fill(inks, Ink.PLAIN);
  }

  /** A canvas of these lines, with a row for each. */
  public static Canvas of(List<String> lines, int width, Ink ink) {
    Canvas canvas = new Canvas(width, lines.size());
    for (int i = 0; i < lines.size(); i++) {
      canvas.put(0, i, lines.get(i), ink);
    }
    return canvas;
  }

  public int width() {
    return width;
  }

  public int height() {
    return height;
  }

  /** The code point of a cell; {@link #TAIL} right of a wide character. */
  public int at(int column, int row) {
    return cells[row * width + column];
  }

  public Ink inkAt(int column, int row) {
    return inks[row * width + column];
  }

  /** Column of the typing cursor, or -1 where there is none. */
  public int cursorColumn() {
    return cursorColumn;
  }

  public int cursorRow() {
    return cursorRow;
  }

  /** Puts the typing cursor in a cell. */
  public void cursor(int column, int row) {
    if (inside(column, row)) {
      cursorColumn = column;
      cursorRow = row;
    }
  }

  private boolean inside(int column, int row) {
    return column >= 0 && column < width && row >= 0 && row < height;
  }

  public void set(int column, int row, int codePoint, Ink ink) {
    if (inside(column, row)) {
      cells[row * width + column] = Printable.shown(codePoint) ? codePoint : 0xFFFD;
      inks[row * width + column] = ink;
    }
  }

  public void set(int column, int row, int codePoint) {
    set(column, row, codePoint, Ink.PLAIN);
  }

  /** Writes a line of text; returns the column after it. */
  public int put(int column, int row, String text, Ink ink) {
    int at = column;
    for (int c : text.codePoints().toArray()) {
      int wide = cells(c);
      if (wide > 0) {
        set(at, row, c, ink);
        if (wide == 2 && inside(at + 1, row)) {
          cells[row * width + at + 1] = TAIL;
          inks[row * width + at + 1] = ink;
        } else if (wide == 2) {
          set(at, row, ' ', ink);
        }
        at += wide;
      }
    }
    return at;
  }

  public int put(int column, int row, String text) {
    return put(column, row, text, Ink.PLAIN);
  }

  /** Fills part of a row with one character. */
  public void row(int column, int row, int length, int codePoint, Ink ink) {
    for (int i = 0; i < length; i++) {
      set(column + i, row, codePoint, ink);
    }
  }

  /** Copies {@code other}, its cursor too, with its top left corner at a cell. */
  public void paste(int column, int row, Canvas other) {
    for (int r = 0; r < other.height; r++) {
      for (int c = 0; c < other.width; c++) {
        if (inside(column + c, row + r)) {
          cells[(row + r) * width + column + c] = other.at(c, r);
          inks[(row + r) * width + column + c] = other.inkAt(c, r);
        }
      }
    }
    if (other.cursorColumn >= 0) {
      cursor(column + other.cursorColumn, row + other.cursorRow);
    }
  }

  /** A copy of this canvas in which each drawing character is an ASCII character. */
  public Canvas ascii() {
    Canvas out = new Canvas(width, height);
    for (int i = 0; i < cells.length; i++) {
      out.cells[i] = cells[i] == TAIL ? ' ' : AsciiTwins.twin(cells[i]);
      out.inks[i] = inks[i];
    }
    out.cursorColumn = cursorColumn;
    out.cursorRow = cursorRow;
    return out;
  }

  /** The canvas as plain text: a line for each row, without trailing blanks. */
  public String text() {
    StringBuilder out = new StringBuilder();
    for (int r = 0; r < height; r++) {
      StringBuilder line = new StringBuilder();
      for (int c = 0; c < width; c++) {
        if (at(c, r) != TAIL) {
          line.appendCodePoint(at(c, r));
        }
      }
      out.append(line.toString().stripTrailing()).append('\n');
    }
    return out.toString();
  }

  /** How many cells a code point takes; one that is replaced takes one. */
  public static int cells(int codePoint) {
    if (codePoint >= ' ' && codePoint <= '~') {
      return 1;
    }
    return Printable.shown(codePoint) ? Math.max(0, WCWidth.wcwidth(codePoint)) : 1;
  }

  /** How many cells a line takes. */
  public static int cells(String text) {
    int cells = 0;
    int next = 0;
    while (next < text.length()) {
      int codePoint = text.codePointAt(next);
      cells += cells(codePoint);
      next += Character.charCount(codePoint);
    }
    return cells;
  }
}
