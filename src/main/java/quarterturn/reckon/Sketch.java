package quarterturn.reckon;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** A grid of ASCII characters to draw on. */
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

  /** Puts a character in a cell, row 0 at the top; a cell outside the grid is ignored. */
  void put(int column, int row, char c) {
    if (row >= 0 && row < rows() && column >= 0 && column < columns()) {
      cells[row][column] = c;
    }
  }

  /** Writes a text along a row, beginning at a column. */
  void write(int column, int row, String text) {
    for (int i = 0; i < text.length(); i++) {
      put(column + i, row, text.charAt(i));
    }
  }

  /** The rows as text, each after {@code margin} blanks and without trailing blanks. */
  List<String> lines(int margin) {
    List<String> lines = new ArrayList<>();
    for (char[] row : cells) {
      lines.add((" ".repeat(margin) + new String(row)).stripTrailing());
    }
    return lines;
  }
}
