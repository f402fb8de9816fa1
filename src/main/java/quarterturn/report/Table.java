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
    List<List<String>> all = new ArrayList<>();
    all.add(header);
    all.addAll(rows);
    all.replaceAll(row -> row.stream().map(Printable::of).toList());
    int[] widths = new int[header.size()];
    for (List<String> row : all) {
      for (int c = 0; c < widths.length; c++) {
        widths[c] = Math.max(widths[c], columns(row.get(c)));
      }
    }
    List<String> lines = new ArrayList<>();
    for (List<String> row : all) {
      StringBuilder line = new StringBuilder();
      for (int c = 0; c < widths.length; c++) {
        line.append(row.get(c)).append(" ".repeat(widths[c] - columns(row.get(c)) + 2));
      }
      lines.add(line.toString().stripTrailing());
    }
    return lines;
  }

  /** How many terminal columns {@code text} takes. */
  public static int columns(String text) {
    return Printable.plain(text)
        ? text.length()
        : text.codePoints().map(c -> Math.max(0, WCWidth.wcwidth(c))).sum();
  }
}
