package quarterturn.report;

import java.util.ArrayList;
import java.util.List;
import org.jline.utils.WCWidth;
import quarterturn.unit.Printable;

/** Columns of plain text under a header, two blanks apart. */
public final class Table {
  private Table() {}

  /**
   * The header and the rows, each as one line.
   *
   * @param rows cells in the header's order; control characters in them are made visible
   */
  public static List<String> lines(List<String> header, List<List<String>> rows) {
    List<String[]> all = new ArrayList<>(rows.size() + 1);
    all.add(shown(header));
    rows.forEach(row -> all.add(shown(row)));
    int[] widths = new int[header.size()];
    int[][] columns = new int[all.size()][widths.length];
    for (int r = 0; r < columns.length; r++) {
      for (int c = 0; c < widths.length; c++) {
        columns[r][c] = columns(all.get(r)[c]);
        widths[c] = Math.max(widths[c], columns[r][c]);
      }
    }
    List<String> lines = new ArrayList<>(columns.length);
    StringBuilder line = new StringBuilder();
    for (int r = 0; r < columns.length; r++) {
      line.setLength(0);
      for (int c = 0; c < widths.length; c++) {
        line.append(all.get(r)[c]);
        for (int i = columns[r][c]; c + 1 < widths.length && i < widths[c] + 2; i++) {
          line.append(' ');
        }
      }
      lines.add(line.toString().stripTrailing());
    }
    return lines;
  }

  private static String[] shown(List<String> row) {
    String[] cells = new String[row.size()];
    for (int c = 0; c < cells.length; c++) {
      cells[c] = Printable.of(row.get(c));
    }
    return cells;
  }

  /** How many terminal columns {@code text} takes. */
  public static int columns(String text) {
    return Printable.plain(text)
        ? text.length()
        : text.codePoints().map(c -> Math.max(0, WCWidth.wcwidth(c))).sum();
  }
}
