package quarterturn.report;

import java.util.ArrayList;
import java.util.List;
import quarterturn.unit.Printable;

/** Wraps text to a width, at blanks where there are any. */
public final class Paragraph {
  private Paragraph() {}

  /**
   * The lines of {@code text}, none wider than {@code width} columns, with control characters made
   * visible.
   *
   * @param text one paragraph for each line break
   * @param hang blanks before each line of a paragraph but the first
   */
  public static List<String> wrap(String text, int width, int hang) {
    int room = Math.max(width, hang + 10);
    List<String> lines = new ArrayList<>();
    for (String paragraph : text.split("\\R", -1)) {
      wrapOne(Printable.of(paragraph), room, hang, lines);
    }
    return lines;
  }

  private static void wrapOne(String text, int width, int hang, List<String> lines) {
    StringBuilder line = new StringBuilder();
    int start = lines.size();
    for (String word : text.stripTrailing().split(" ", -1)) {
      boolean first = line.length() == 0;
      if (!first && Table.columns(line + " " + word) > width) {
        lines.add(line.toString().stripTrailing());
        line = new StringBuilder(" ".repeat(hang));
        first = true;
      }
      line.append(first ? "" : " ").append(word);
      while (Table.columns(line.toString()) > width) {
        int cut = fitting(line, width);
        lines.add(line.substring(0, cut));
        line = new StringBuilder(" ".repeat(hang)).append(line, cut, line.length());
      }
    }
    if (lines.size() == start || !line.toString().isBlank()) {
      lines.add(line.toString().stripTrailing());
    }
  }

  /** How many characters of a long word fit on a line, at least one code point. */
  private static int fitting(CharSequence line, int width) {
    int columns = 0;
    int at = 0;
    while (at < line.length()) {
      int point = Character.codePointAt(line, at);
      columns += Table.columns(Character.toString(point));
      if (columns > width && at > 0) {
        return at;
      }
      at += Character.charCount(point);
    }
    return at;
  }
}
