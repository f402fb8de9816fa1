package quarterturn.report.sheet;

import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import quarterturn.unit.Dates;
import quarterturn.unit.Printable;

/**
 * A sheet as one HTML page to show and print. It has no script, fetches nothing, and has its styles
 * inside. It is also well-formed XML, so that any XML reader can check it.
 */
public final class SheetHtml {
  private static final String STYLE =
      """
      :root { color-scheme: light dark; --ink: #111; --ground: #fff; --faint: #555;
        --rule: #999; --band: #cfe3cf; --bar: #1c3f94; --turn: #8a3b00; }
      @media (prefers-color-scheme: dark) {
        :root { --ink: #eee; --ground: #161616; --faint: #b5b5b5; --rule: #777;
          --band: #29452b; --bar: #9db8ff; --turn: #ffb27a; }
      }
      body { font-family: sans-serif; line-height: 1.4; max-width: 48rem; margin: 1.5rem auto;
        padding: 0 1rem; color: var(--ink); background: var(--ground);
        overflow-wrap: break-word; }
      h1 { border-bottom: 2px solid var(--ink); }
      h2 { margin-bottom: 0.3rem; }
      table { border-collapse: collapse; width: 100%; margin: 0.6rem 0; }
      caption { text-align: left; color: var(--faint); padding-bottom: 0.2rem; }
      th, td { text-align: left; vertical-align: top; padding: 0.2rem 0.6rem 0.2rem 0;
        border-bottom: 1px solid var(--rule); }
      .when { white-space: nowrap; }
      svg { width: 100%; height: auto; }
      svg text { font-family: sans-serif; font-size: 12px; fill: var(--ink); }
      .axis { stroke: var(--ink); fill: none; }
      .window { fill: var(--band); stroke: var(--rule); stroke-dasharray: 2 2; }
      .reading { fill: var(--bar); }
      .turn { stroke: var(--turn); stroke-dasharray: 6 3; }
      figure { margin: 0.6rem 0; }
      figcaption { color: var(--faint); }
      @media print {
        :root { color-scheme: light; --ink: #000; --ground: #fff; --faint: #000; --rule: #000;
          --band: #ddd; --bar: #000; --turn: #000; }
        @page { size: A4; margin: 15mm; }
        body { max-width: none; margin: 0; padding: 0; font-size: 10.5pt; }
        h2 { break-after: avoid; }
        tr, figure, li, .short { break-inside: avoid; }
        thead { display: table-header-group; }
      }
      """;

  /** A run of signs longer than any word, after which a line may be broken. */
  private static final Pattern LONG = Pattern.compile("\\S{30}(?=\\S)");

  /** A time as the sheet prints it. */
  private static final Pattern TIME = Pattern.compile("\\d{4}-\\d\\d-\\d\\d \\d\\d:\\d\\d");

  /** Most rows of a table that is kept on one page. */
  private static final int SHORT = 8;

  /** A place without width at which a line may be broken. */
  private static final String BREAK = "\u200b";

  private final StringBuilder out = new StringBuilder();

  private SheetHtml() {}

  public static String of(Sheet sheet, Dates dates) {
    String heading = SheetParts.title(sheet);
    String title = sheet.rehearsed() ? heading : heading + ", " + sheet.heading().session();
    String plot = ReliefPlot.of(sheet, dates);
    return new SheetHtml().page(title, heading, SheetParts.of(sheet, dates), plot);
  }

  public static String of(String title, List<SheetPart> parts) {
    return new SheetHtml().page(title, title, parts, "");
  }

  /**
   * The HTML of the page.
   *
   * @param title the page's title in a browser
   * @param heading the heading at the top
   * @param plot the drawing of the relief, or empty
   */
  private String page(String title, String heading, List<SheetPart> parts, String plot) {
    out.append(
        "<!DOCTYPE html>\n<html lang=\"en\" xmlns=\"http://www.w3.org/1999/xhtml\">\n<head>\n");
    out.append("<meta charset=\"utf-8\"/>\n");
    out.append("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\"/>\n");
    out.append("<title>").append(escape(title)).append("</title>\n<style>\n").append(STYLE);
    out.append("</style>\n</head>\n<body>\n<main>\n<h1>").append(escape(heading));
    out.append("</h1>\n");
    for (SheetPart part : parts) {
      out.append("<section>\n<h2>").append(escape(part.title())).append("</h2>\n");
      part.blocks().forEach(this::block);
      if (part.title().equals(SheetParts.MEASURES) && !plot.isEmpty()) {
        out.append("<figure>\n")
            .append(plot)
            .append("<figcaption>Relief on the lowest string, in ");
        out.append("mm: readings as bars, rod turns as broken lines (plus tightens), the range as");
        out.append(" a band. In the order of time, not to its scale.</figcaption>\n</figure>\n");
      }
      out.append("</section>\n");
    }
    return out.append("</main>\n</body>\n</html>\n").toString();
  }

  private void block(SheetPart.Block block) {
    if (block instanceof SheetPart.Facts facts) {
      facts(facts.facts());
    } else if (block instanceof SheetPart.Points points) {
      out.append("<ul>\n");
      points.points().forEach(p -> out.append("<li>").append(escape(p)).append("</li>\n"));
      out.append("</ul>\n");
    } else if (block instanceof SheetPart.Grid grid) {
      grid(grid);
    }
  }

  private void facts(Map<String, String> facts) {
    out.append("<table>\n<tbody>\n");
    facts.forEach(
        (label, value) -> {
          out.append("<tr><th scope=\"row\">").append(escape(label)).append("</th><td>");
          out.append(escape(value)).append("</td></tr>\n");
        });
    out.append("</tbody>\n</table>\n");
  }

  private void grid(SheetPart.Grid grid) {
    out.append(grid.rows().size() > SHORT ? "<table>" : "<table class=\"short\">");
    out.append("\n<caption>").append(escape(grid.caption())).append("</caption>\n<thead><tr>");
    grid.head().forEach(h -> out.append("<th scope=\"col\">").append(escape(h)).append("</th>"));
    out.append("</tr></thead>\n<tbody>\n");
    for (List<String> row : grid.rows()) {
      out.append("<tr><th scope=\"row\"").append(when(row.get(0))).append('>');
      out.append(escape(row.get(0))).append("</th>");
      row.subList(1, row.size())
          .forEach(cell -> out.append("<td>").append(escape(cell)).append("</td>"));
      out.append("</tr>\n");
    }
    out.append("</tbody>\n</table>\n");
  }

  /** A time stays on one line. */
  private static String when(String cell) {
    return TIME.matcher(cell).matches() ? " class=\"when\"" : "";
  }

  /** Text escaped for use between tags and within quotes. */
  static String escape(String text) {
    return LONG.matcher(Printable.of(text))
        .replaceAll("$0" + BREAK)
        .replace("&", "&amp;")
        .replace("<", "&lt;")
        .replace(">", "&gt;")
        .replace("\"", "&quot;")
        .replace("'", "&#39;");
  }
}
