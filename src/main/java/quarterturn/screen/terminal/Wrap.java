package quarterturn.screen.terminal;

import java.util.ArrayList;
import java.util.List;

/** Breaks text into lines. */
public final class Wrap {
  private Wrap() {}

  /** Lines of at most {@code width} cells; line breaks in the text are kept. */
  public static List<String> lines(String text, int width) {
    List<String> out = new ArrayList<>();
    int from = 0;
    while (from <= text.length()) {
      int to = from;
      while (to < text.length() && !breaks(text.charAt(to))) {
        to++;
      }
      paragraph(text.substring(from, to).strip(), Math.max(1, width), out);
      from = to + (text.startsWith("\r\n", to) ? 2 : 1);
    }
    return out;
  }

  /** Whether a character ends a line, as the Unicode Standard, section 5.8, has it. */
  private static boolean breaks(char c) {
    return (c >= '\n' && c <= '\r') || c == '\u0085' || c == '\u2028' || c == '\u2029';
  }

  private static void paragraph(String text, int width, List<String> out) {
    StringBuilder line = new StringBuilder();
    int used = 0;
    int next = 0;
    while (next <= text.length()) {
      int blank = text.indexOf(' ', next);
      String word = text.substring(next, blank < 0 ? text.length() : blank);
      next += word.length() + 1;
      while (next < text.length() && text.charAt(next) == ' ') {
        next++;
      }
      int wide = Canvas.cells(word);
      if (used > 0 && used + 1 + wide > width) {
        out.add(line.toString());
        line.setLength(0);
        used = 0;
      }
      if (used > 0) {
        line.append(' ');
        used++;
      }
      for (int c : word.codePoints().toArray()) {
        if (used + Canvas.cells(c) > width) {
          out.add(line.toString());
          line.setLength(0);
          used = 0;
        }
        line.appendCodePoint(c);
        used += Canvas.cells(c);
      }
    }
    out.add(line.toString());
  }

  /**
   * {@code text} in one line of at most {@code width} cells, ending in an ellipsis where it was
   * cut.
   */
  public static String cut(String text, int width) {
    if (Canvas.cells(text) <= width) {
      return text;
    }
    StringBuilder out = new StringBuilder();
    int used = 0;
    for (int c : text.codePoints().toArray()) {
      if (used + Canvas.cells(c) > width - 1) {
        break;
      }
      out.appendCodePoint(c);
      used += Canvas.cells(c);
    }
    return width < 1 ? "" : out.append('…').toString();
  }

  /** The end of {@code text} in at most {@code width} cells, cut at its front. */
  public static String cutFront(String text, int width) {
    if (Canvas.cells(text) <= width) {
      return text;
    }
    String reversed = new StringBuilder(text).reverse().toString();
    return new StringBuilder(cut(reversed, width)).reverse().toString();
  }
}
