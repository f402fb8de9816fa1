package quarterturn.screen.page;

import java.util.ArrayList;
import java.util.List;
import quarterturn.screen.terminal.Canvas;
import quarterturn.screen.terminal.Ink;
import quarterturn.screen.terminal.Wrap;

/**
 * One line of running text, which may begin with a sign or word.
 *
 * @param lead the sign or word at the start; empty on continued lines
 * @param leadAt cells from the left edge to the sign or word
 * @param indent cells from the left edge to the text
 */
public record Line(String lead, Ink leadInk, int leadAt, int indent, String text, Ink ink) {
  public static final Line BLANK = new Line("", Ink.PLAIN, 0, "", Ink.PLAIN);

  /** A line whose lead stands at the left edge. */
  public Line(String lead, Ink leadInk, int indent, String text, Ink ink) {
    this(lead, leadInk, 0, indent, text, ink);
  }

  /** {@code text} wrapped into lines; the first one begins with {@code lead}. */
  public static List<Line> wrapped(String lead, Ink leadInk, String text, Ink ink, int width) {
    int indent = lead.isEmpty() ? 0 : Canvas.cells(lead) + 1;
    List<Line> out = new ArrayList<>();
    for (String line : Wrap.lines(text, width - indent)) {
      out.add(new Line(out.isEmpty() ? lead : "", leadInk, indent, line, ink));
    }
    return out;
  }

  /** {@code text} wrapped into lines, lead and text in plain ink. */
  public static List<Line> wrapped(String lead, String text, int width) {
    return wrapped(lead, Ink.PLAIN, text, Ink.PLAIN, width);
  }

  public static List<Line> wrapped(String text, int width) {
    return wrapped("", text, width);
  }

  public static Line heading(String text) {
    return new Line("", Ink.PLAIN, 0, text, Ink.STRONG);
  }

  /** Draws lines from index {@code from} on, at most {@code rows} of them. */
  public static void draw(
      Canvas canvas, int column, int row, List<Line> lines, int from, int rows) {
    for (int i = 0; i < rows && from + i < lines.size(); i++) {
      Line line = lines.get(from + i);
      canvas.put(column + line.indent(), row + i, line.text(), line.ink());
      canvas.put(column + line.leadAt(), row + i, line.lead(), line.leadInk());
    }
  }
}
