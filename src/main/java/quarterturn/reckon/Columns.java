package quarterturn.reckon;

import java.util.ArrayList;
import java.util.List;
import quarterturn.unit.Decimals;

/** Numbered values side by side, read down each column. */
final class Columns {
  private static final int ROWS = 12;

  private Columns() {}

  /**
   * The numbered values as lines of text.
   *
   * @param name of what is numbered, such as "fret"
   * @param first number of the first value
   * @param values in the order of their numbers
   */
  static List<String> lines(String name, int first, double[] values, int decimals) {
    List<String> cells = new ArrayList<>();
    for (int i = 0; i < values.length; i++) {
      cells.add("%s %2d  %s".formatted(name, first + i, Decimals.print(values[i], decimals)));
    }
    int width = cells.stream().mapToInt(String::length).max().orElse(0);
    int rows = Math.min(ROWS, cells.size());
    List<String> lines = new ArrayList<>();
    for (int row = 0; row < rows; row++) {
      StringBuilder line = new StringBuilder();
      for (int i = row; i < cells.size(); i += rows) {
        line.append("  ").append(cells.get(i)).append(" ".repeat(width - cells.get(i).length()));
      }
      lines.add(line.toString().stripTrailing());
    }
    return lines;
  }
}
