package quarterturn.report.sheet;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Pattern;
import quarterturn.report.Table;
import quarterturn.unit.Printable;

/**
 * A sheet as Markdown with pipe tables. Typed text is escaped, so that it shows as typed and makes
 * no marks or links.
 */
public final class SheetMarkdown {
  /** Marks that mean something wherever they stand; others are plain text as they are. */
  private static final String MARKS = "\\`*_[]<>|&~@$";

  /** What would begin a heading, a list, a rule or a definition at the head of a line. */
  private static final Pattern OPENS =
      Pattern.compile("^(\\d*)((?<!\\d)[-+=:#]|(?<=\\d)[.)](?=\\s|$))");

  /** Widest table whose columns are filled up with blanks, so that it reads as it stands. */
  private static final int WIDE = 100;

  private static final int RULE = 3;

  private SheetMarkdown() {}

  public static String of(String title, List<SheetPart> parts) {
    List<String> lines = new ArrayList<>();
    lines.add("# " + escape(title));
    for (SheetPart part : parts) {
      lines.add("");
      lines.add("## " + escape(part.title()));
      for (SheetPart.Block block : part.blocks()) {
        lines.add("");
        lines.addAll(block(block));
      }
    }
    return String.join("\n", lines) + "\n";
  }

  private static List<String> block(SheetPart.Block block) {
    List<String> lines = new ArrayList<>();
    if (block instanceof SheetPart.Facts facts) {
      facts.facts().forEach((label, value) -> lines.add("- **" + label + ":** " + escape(value)));
    } else if (block instanceof SheetPart.Points points) {
      points.points().forEach(point -> lines.add("- " + line(point)));
    } else if (block instanceof SheetPart.Grid grid) {
      lines.add(line(grid.caption()));
      lines.add("");
      lines.addAll(table(grid));
    }
    return lines;
  }

  private static List<String> table(SheetPart.Grid grid) {
    List<List<String>> rows = new ArrayList<>();
    rows.add(grid.head());
    grid.rows().forEach(cells -> rows.add(cells.stream().map(c -> escape(c)).toList()));
    int[] widths = new int[grid.head().size()];
    Arrays.fill(widths, RULE);
    rows.forEach(
        row -> {
          for (int c = 0; c < widths.length; c++) {
            widths[c] = Math.max(widths[c], Table.columns(row.get(c)));
          }
        });
    if (Arrays.stream(widths).sum() + RULE * widths.length > WIDE) {
      Arrays.fill(widths, RULE);
    }
    List<String> lines = new ArrayList<>();
    rows.forEach(row -> lines.add(row(row, widths)));
    lines.add(1, row(Arrays.stream(widths).mapToObj("-"::repeat).toList(), widths));
    return lines;
  }

  private static String row(List<String> cells, int[] widths) {
    StringBuilder line = new StringBuilder("|");
    for (int c = 0; c < widths.length; c++) {
      String cell = cells.get(c);
      line.append(' ').append(cell);
      line.append(" ".repeat(Math.max(0, widths[c] - Table.columns(cell)))).append(" |");
    }
    return line.toString();
  }

  /** {@code text} escaped for the inside of a Markdown line. */
  static String escape(String text) {
    String line = Printable.of(text).strip();
    StringBuilder out = new StringBuilder();
    for (int i = 0; i < line.length(); i++) {
      if (MARKS.indexOf(line.charAt(i)) >= 0 || link(line, i)) {
        out.append('\\');
      }
      out.append(line.charAt(i));
    }
    return out.toString();
  }

  /**
   * {@code text} escaped for the start of a Markdown line, where it could begin a list or a rule.
   */
  static String line(String text) {
    return OPENS.matcher(escape(text)).replaceFirst("$1\\\\$2");
  }

  /** Whether a colon or dot at an index would make a bare address a link. */
  private static boolean link(String line, int i) {
    return line.startsWith("://", i) || (line.charAt(i) == '.' && www(line, i));
  }

  private static boolean www(String line, int i) {
    return i >= 3 && line.regionMatches(true, i - 3, "www", 0, 3);
  }
}
