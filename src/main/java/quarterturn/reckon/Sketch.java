package quarterturn.reckon;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** A grid of plain characters, so that a picture stands on every terminal and in every file. */
final class Sketch {
  private final char[][] cells;

  Sketch(int columns, int rows) {
    cells = new char[rows][columns];
    for (char[] row : cells) {
      Arrays.fill(row, ' ');
    }
  }

  int columns() {
    return cells[0].length;
  }

  int rows() {
    return cells.length;
  }

  /** Puts a character; what falls outside is left out. Row 0 is the top. */
  void put(int column, int row, char c) {
    if (row >= 0 && row < rows() && column >= 0 && column < columns()) {
      cells[row][column] = c;
    }
  }

  /** Writes a text from a column on. */
  void write(int column, int row, String text) {
    for (int i = 0; i < text.length(); i++) {
      put(column + i, row, text.charAt(i));
    }
  }

  /** The lines, each behind {@code margin} blanks and without blanks at its end. */
  List<String> lines(int margin) {
    List<String> lines = new ArrayList<>();
    for (char[] row : cells) {
      lines.add((" ".repeat(margin) + new String(row)).stripTrailing());
    }
    return lines;
  }
}
