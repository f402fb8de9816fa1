package quarterturn.report.graph;

import java.util.ArrayList;
import java.util.List;
import quarterturn.procedure.Procedure;
import quarterturn.procedure.Step;
import quarterturn.report.Ascii;
import quarterturn.report.Paragraph;
import quarterturn.unit.Counted;

/** A procedure's steps and ways as plain text, at most 80 columns wide, in ASCII. */
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
   * The steps by part as lines of text: each step, the steps that lead to it if several do, and its
   * ways on.
   */
  public static List<String> lines(Procedure procedure) {
    GraphText text = new GraphText(ProcedureGraph.of(procedure));
    text.draw();
    return List.copyOf(text.lines);
  }

  private void draw() {
    Procedure procedure = graph.procedure();
    add(procedure.id() + ": " + procedure.title(), 0, 4);
    String steps = Counted.of(procedure.steps().size(), "step");
    add(steps + ", begins at " + procedure.begin(), 0, 4);
    for (ProcedureGraph.Part part : graph.parts()) {
      lines.add("");
      int from = lines.size();
      add(part.name(), 0, 0);
      int widest =
          lines.subList(from, lines.size()).stream().mapToInt(String::length).max().orElse(0);
      lines.add("-".repeat(widest));
      part.steps().forEach(this::step);
    }
  }

  private void step(Step step) {
    List<String> words = new ArrayList<>();
    words.add(step.id() + " (" + StepWords.kind(step) + ")");
    if (!StepWords.about(step).isEmpty()) {
      words.add(StepWords.about(step));
    }
    graph.marks(step.id()).forEach(mark -> words.add("[" + mark + "]"));
    add(String.join(" ", words), 0, 8);
    List<String> into = graph.into(step.id());
    if (into.size() > 1) {
      add("<- from " + String.join(", ", into), 1, 8);
    } else if (into.isEmpty() && graph.marks(step.id()).isEmpty()) {
      add("<- nothing leads here", 1, 8);
    }
    List<ProcedureGraph.Way> ways = graph.from(step.id());
    int widest = ways.stream().mapToInt(way -> Ascii.of(way.words()).length()).max().orElse(0);
    int arrow = ways.stream().mapToInt(way -> arrow(way).length()).max().orElse(0);
    int room = Math.max(LEAST, WIDTH - 2 * INDENT.length() - arrow);
    int column = Math.min(widest, room);
    ways.forEach(way -> way(way, column));
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
