package quarterturn.report.graph;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import quarterturn.report.Paragraph;

/** The drawing of a procedure in the DOT language, for Graphviz to lay out. ASCII only. */
public final class GraphDot {
  /** Most characters in a line of a label, so that the picture stays narrow. */
  private static final int WIDEST = 28;

  private static final int LAST_ASCII = 0x7E;

  private static final Map<String, String> SHAPES =
      Map.ofEntries(
          Map.entry("tell", "box"),
          Map.entry("choose", "diamond"),
          Map.entry("note", "note"),
          Map.entry("measure", "ellipse"),
          Map.entry("compute", "hexagon"),
          Map.entry("turn", "octagon"),
          Map.entry("adjust", "trapezium"),
          Map.entry("wait", "cds"),
          Map.entry("call", "component"),
          Map.entry("done", "doublecircle"),
          Map.entry("hand-over", "doubleoctagon"));

  private GraphDot() {}

  /** The drawing, line by line: a cluster for each part with a title, then the ways. */
  public static List<String> lines(ProcedureGraph graph) {
    List<String> lines = new ArrayList<>();
    lines.add("digraph " + quoted(graph.procedure().id()) + " {");
    lines.add("  label=" + label(graph.procedure().title(), Integer.MAX_VALUE) + ";");
    lines.add("  node [fontname=\"sans-serif\"];");
    lines.add("  edge [fontname=\"sans-serif\", fontsize=10];");
    int cluster = 0;
    for (ProcedureGraph.Part part : graph.parts()) {
      if (part.title().isEmpty()) {
        part.boxes().forEach(box -> lines.add("  " + node(box)));
        continue;
      }
      lines.add("  subgraph " + quoted("cluster_" + cluster++) + " {");
      lines.add("    label=" + label(part.title(), Integer.MAX_VALUE) + ";");
      part.boxes().forEach(box -> lines.add("    " + node(box)));
      lines.add("  }");
    }
    List<ProcedureGraph.Way> ways =
        graph.ways().values().stream()
            .flatMap(List::stream)
            .filter(way -> graph.draws(way.from()) || graph.draws(way.to()))
            .toList();
    ways.stream()
        .flatMap(way -> Stream.of(way.from(), way.to()))
        .filter(box -> !graph.draws(box))
        .distinct()
        .forEach(box -> lines.add("  " + quoted(box) + " [shape=plaintext];"));
    ways.forEach(way -> lines.add("  " + edge(way)));
    lines.add("}");
    return lines;
  }

  private static String node(ProcedureGraph.Box box) {
    List<String> text = new ArrayList<>(List.of(box.id(), box.kind()));
    if (!box.about().isEmpty()) {
      text.add(box.about());
    }
    if (!box.ends().isEmpty()) {
      text.add("ends: " + String.join(", ", box.ends()));
    }
    String bold = box.marks().contains("begin") ? ", penwidth=2" : "";
    return quoted(box.id())
        + " [label="
        + label(String.join("\n", text), WIDEST)
        + ", shape="
        + SHAPES.getOrDefault(box.kind(), "box")
        + bold
        + "];";
  }

  private static String edge(ProcedureGraph.Way way) {
    List<String> attributes = new ArrayList<>();
    if (!way.words().isEmpty()) {
      attributes.add("label=" + label(way.words(), WIDEST));
    }
    if (way.back()) {
      attributes.add("style=dashed");
    }
    String all = attributes.isEmpty() ? "" : " [" + String.join(", ", attributes) + "]";
    return quoted(way.from()) + " -> " + quoted(way.to()) + all + ";";
  }

  private static String label(String text, int width) {
    return "\""
        + Paragraph.wrap(text, width, 0).stream()
            .map(GraphDot::escaped)
            .collect(Collectors.joining("\\n"))
        + "\"";
  }

  private static String quoted(String id) {
    return "\"" + escaped(id) + "\"";
  }

  /**
   * The text of a quoted DOT label: backslashes before quotes and backslashes, ampersands and
   * characters beyond ASCII as entities.
   */
  private static String escaped(String text) {
    StringBuilder out = new StringBuilder();
    text.codePoints()
        .forEach(
            c -> {
              if (c == '"' || c == '\\') {
                out.append('\\').appendCodePoint(c);
              } else if (c == '&' || c > LAST_ASCII) {
                out.append("&#").append(c).append(';');
              } else {
                out.appendCodePoint(c);
              }
            });
    return out.toString();
  }
}
