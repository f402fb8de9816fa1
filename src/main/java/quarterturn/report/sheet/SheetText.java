package quarterturn.report.sheet;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import quarterturn.report.Paragraph;
import quarterturn.report.Table;
import quarterturn.unit.Printable;

/** A sheet as plain text, no line wider than its columns. */
public final class SheetText {
  /** Width of a sheet. */
  static final int WIDTH = 80;

  /** Width of a page that is to be printed as it is, with margins. */
  static final int PAGE = 78;

  /** Narrowest width of a column. */
  private static final int LEAST = 10;

  private static final int GAP = 2;

  private final int width;

  private SheetText(int width) {
    this.width = width;
  }

  public static String of(String title, List<SheetPart> parts) {
    return of(title, parts, WIDTH);
  }

  static String of(String title, List<SheetPart> parts, int width) {
    return new SheetText(width).page(title, parts);
  }

  private String page(String title, List<SheetPart> parts) {
    List<String> lines = new ArrayList<>(wrap(title.toUpperCase(Locale.ROOT), width, 0));
    lines.add("=".repeat(width));
    for (SheetPart part : parts) {
      lines.add("");
      lines.addAll(wrap(part.title(), width, 0));
      lines.add("-".repeat(Math.min(width, Table.columns(Printable.of(part.title())))));
      boolean first = true;
      for (SheetPart.Block block : part.blocks()) {
        if (!first) {
          lines.add("");
        }
        first = false;
        lines.addAll(block(block));
      }
    }
    return String.join("\n", lines) + "\n";
  }

  private List<String> block(SheetPart.Block block) {
    if (block instanceof SheetPart.Facts facts) {
      return facts(facts.facts());
    }
    if (block instanceof SheetPart.Points points) {
      return points.points().stream().flatMap(p -> wrap("- " + p, width, 2).stream()).toList();
    }
    SheetPart.Grid grid = (SheetPart.Grid) block;
    List<String> lines = new ArrayList<>(wrap(grid.caption(), width, 0));
    lines.addAll(grid(grid));
    return lines;
  }

  /** Wraps text in which typed line breaks are replaced like other control characters. */
  private static List<String> wrap(String text, int width, int hang) {
    return Paragraph.wrap(Printable.of(text), width, hang);
  }

  private List<String> facts(Map<String, String> facts) {
    int widest = facts.keySet().stream().mapToInt(Table::columns).max().orElse(0);
    List<String> lines = new ArrayList<>();
    facts.forEach(
        (label, value) -> {
          String before = label + ":" + " ".repeat(widest - Table.columns(label) + 1);
          // The value alone is wrapped, since its label's blanks are not to be broken at.
          for (String line : wrap(value, width - before.length(), 0)) {
            lines.add((before + line).stripTrailing());
            before = " ".repeat(widest + 2);
          }
        });
    return lines;
  }

  private List<String> grid(SheetPart.Grid grid) {
    int[] widths = widths(grid);
    List<String> lines = new ArrayList<>();
    lines.addAll(row(grid.head(), widths));
    lines.add(rule(widths));
    grid.rows().forEach(row -> lines.addAll(row(row, widths)));
    return lines;
  }

  /**
   * Column widths for the widest cells, the widest columns made narrower to fit the page. No column
   * gets narrower than its longest word, as long as another has room to give.
   */
  private int[] widths(SheetPart.Grid grid) {
    int[] widths = new int[grid.head().size()];
    int[] words = new int[widths.length];
    List<List<String>> all = new ArrayList<>(grid.rows());
    all.add(grid.head());
    for (List<String> row : all) {
      for (int c = 0; c < widths.length; c++) {
        String cell = Printable.of(row.get(c));
        widths[c] = Math.max(widths[c], Table.columns(cell));
        for (String word : cell.split(" ", -1)) {
          words[c] = Math.max(words[c], Table.columns(word));
        }
      }
    }
    narrow(widths, words);
    narrow(widths, new int[widths.length]);
    return widths;
  }

  /** Makes the widest columns narrower until the page has room, none below its least width. */
  private void narrow(int[] widths, int[] least) {
    int room = width - GAP * (widths.length - 1);
    while (Arrays.stream(widths).sum() > room) {
      int widest = -1;
      for (int c = 0; c < widths.length; c++) {
        boolean gives = widths[c] > Math.max(LEAST, least[c]);
        widest = gives && (widest < 0 || widths[c] > widths[widest]) ? c : widest;
      }
      if (widest < 0) {
        return;
      }
      widths[widest]--;
    }
  }

  private static String rule(int[] widths) {
    List<String> rules = new ArrayList<>();
    for (int width : widths) {
      rules.add("-".repeat(width));
    }
    return String.join(" ".repeat(GAP), rules);
  }

  private static List<String> row(List<String> cells, int[] widths) {
    List<List<String>> wrapped = new ArrayList<>();
    int height = 0;
    for (int c = 0; c < widths.length; c++) {
      List<String> lines = narrow(cells.get(c), widths[c]);
      wrapped.add(lines);
      height = Math.max(height, lines.size());
    }
    List<String> lines = new ArrayList<>();
    for (int i = 0; i < height; i++) {
      StringBuilder line = new StringBuilder();
      for (int c = 0; c < widths.length; c++) {
        String cell = i < wrapped.get(c).size() ? wrapped.get(c).get(i) : "";
        line.append(cell).append(" ".repeat(Math.max(0, widths[c] - Table.columns(cell)) + GAP));
      }
      lines.add(line.toString().stripTrailing());
    }
    return lines;
  }

  private static List<String> narrow(String cell, int width) {
    return Table.columns(Printable.of(cell)) <= width
        ? List.of(Printable.of(cell))
        : wrap(cell, width, 0);
  }
}
