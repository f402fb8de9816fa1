package quarterturn.report.graph;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import quarterturn.report.Ascii;
import quarterturn.report.Paragraph;

/** The drawing of a procedure as plain text, at most 80 columns wide, in ASCII. */
public final class GraphText {
  private static final int WIDTH = 80;
  private static final String INDENT = "  ";

  /** Fewest columns kept for the words of a way before its arrow. */
  private static final int LEAST = 36;

  private final ProcedureGraph graph;
  private final List<String> lines = new ArrayList<>();

  private GraphText(ProcedureGraph graph) {
    this.graph = graph;
  }

  /**
   * The boxes as lines of text: each with those that lead to it, if several do or one that is not
   * drawn, and its ways on.
   */
  public static List<String> lines(ProcedureGraph graph) {
    GraphText text = new GraphText(graph);
    text.draw();
    return List.copyOf(text.lines);
  }

  private void draw() {
    add(graph.procedure().id() + ": " + graph.procedure().title(), 0, 4);
    add(graph.size(), 0, 4);
    for (ProcedureGraph.Part part : graph.parts()) {
      lines.add("");
      title(part.title());
      part.boxes().forEach(this::box);
    }
  }

  private void title(String title) {
    if (!title.isEmpty()) {
      int from = lines.size();
      add(title, 0, 0);
      int widest =
          lines.subList(from, lines.size()).stream().mapToInt(String::length).max().orElse(0);
      lines.add("-".repeat(widest));
    }
  }

  private void box(ProcedureGraph.Box box) {
    List<String> words = new ArrayList<>();
    words.add(box.id() + " (" + box.kind() + ")");
    if (!box.about().isEmpty()) {
      words.add(box.about());
    }
    box.marks().forEach(mark -> words.add("[" + mark + "]"));
    add(String.join(" ", words), 0, 8);
    Set<String> into = graph.into(box.id());
    if (into.size() > 1 || !into.stream().allMatch(graph::draws)) {
      add("<- from " + String.join(", ", into), 1, 8);
    } else if (into.isEmpty() && box.marks().isEmpty()) {
      add("<- nothing leads here", 1, 8);
    }
    List<ProcedureGraph.Way> ways = graph.from(box.id());
    int widest = ways.stream().mapToInt(way -> Ascii.of(way.words()).length()).max().orElse(0);
    int arrow = ways.stream().mapToInt(way -> arrow(way).length()).max().orElse(0);
    int room = Math.max(LEAST, WIDTH - 2 * INDENT.length() - arrow);
    int column = Math.min(widest, room);
    ways.forEach(way -> way(way, column));
    if (!box.ends().isEmpty()) {
      add("ends: " + String.join(", ", box.ends()), 1, 8);
    }
  }

  /**
   * Adds a way's words and its arrow, which begins at a column or, for long words, on the next
   * line.
   */
  private void way(ProcedureGraph.Way way, int column) {
    String arrow = arrow(way);
    if (way.words().isEmpty()) {
      lines.add(INDENT + arrow);
      return;
    }
    List<String> words = Paragraph.wrap(Ascii.of(way.words()), column, 2);
    int last = words.size() - 1;
    words.subList(0, last).forEach(line -> lines.add(INDENT + line));
    String end = words.get(last);
    String padded = INDENT + end + " ".repeat(Math.max(0, column - end.length()) + 2);
    if (padded.length() + arrow.length() <= WIDTH) {
      lines.add(padded + arrow);
    } else {
      lines.add(INDENT + end);
      lines.add(INDENT + INDENT + INDENT + arrow);
    }
  }

  private static String arrow(ProcedureGraph.Way way) {
    return "-> " + (way.back() ? "back to " : "") + way.to();
  }

  private void add(String text, int depth, int hang) {
    String before = INDENT.repeat(depth);
    Paragraph.wrap(Ascii.of(text), WIDTH - before.length(), hang)
        .forEach(line -> lines.add(before + line));
  }
}
