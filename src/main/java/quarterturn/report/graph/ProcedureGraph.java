package quarterturn.report.graph;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import quarterturn.procedure.Procedure;
import quarterturn.procedure.Step;

/**
 * The steps of a procedure and every way between them, for a drawing.
 *
 * @param ways from each step, in the file's order
 */
record ProcedureGraph(Procedure procedure, Map<String, List<Way>> ways) {
  /**
   * A way from one step to another.
   *
   * @param words the condition, option, feel or time; empty where there is none
   * @param back whether the way closes a loop: {@code to} comes earlier and leads here again
   */
  record Way(String from, String words, String to, boolean back) {}

  /** A named part of the procedure with its steps. */
  record Part(String name, List<Step> steps) {}

  static ProcedureGraph of(Procedure procedure) {
    List<String> order = List.copyOf(procedure.steps().keySet());
    Map<String, List<StepWords.Exit>> exits = new LinkedHashMap<>();
    procedure.steps().values().forEach(step -> exits.put(step.id(), StepWords.exits(step)));
    Map<String, List<Way>> ways = new LinkedHashMap<>();
    for (String from : order) {
      List<Way> here = new ArrayList<>();
      for (StepWords.Exit exit : exits.getOrDefault(from, List.of())) {
        boolean above = order.indexOf(exit.to()) <= order.indexOf(from);
        here.add(new Way(from, exit.words(), exit.to(), above && leads(exits, exit.to(), from)));
      }
      ways.put(from, List.copyOf(here));
    }
    return new ProcedureGraph(procedure, ways);
  }

  private static boolean leads(
      Map<String, List<StepWords.Exit>> exits, String from, String wanted) {
    Deque<String> open = new ArrayDeque<>(List.of(from));
    Set<String> seen = new HashSet<>();
    while (!open.isEmpty()) {
      String step = open.pop();
      if (step.equals(wanted)) {
        return true;
      }
      if (seen.add(step)) {
        exits.getOrDefault(step, List.of()).forEach(exit -> open.push(exit.to()));
      }
    }
    return false;
  }

  List<Way> from(String step) {
    return ways.getOrDefault(step, List.of());
  }

  /** The steps that lead to {@code step}, each once, in the file's order. */
  List<String> into(String step) {
    Set<String> steps = new LinkedHashSet<>();
    ways.values().stream()
        .flatMap(List::stream)
        .filter(way -> way.to().equals(step))
        .forEach(way -> steps.add(way.from()));
    return List.copyOf(steps);
  }

  /** The parts of the work, in the file's order. */
  List<Part> parts() {
    List<Part> parts = new ArrayList<>();
    for (Step step : procedure.steps().values()) {
      String name = step.words().part();
      if (parts.isEmpty() || !parts.get(parts.size() - 1).name().equals(name)) {
        parts.add(new Part(name, new ArrayList<>()));
      }
      parts.get(parts.size() - 1).steps().add(step);
    }
    return parts;
  }

  /** Labels of a step: whether work begins there, and whether tuning again leads there. */
  List<String> marks(String step) {
    List<String> marks = new ArrayList<>();
    if (step.equals(procedure.begin())) {
      marks.add("begin");
    }
    if (step.equals(procedure.retune()) && !procedure.retune().equals(procedure.begin())) {
      marks.add("retune");
    }
    if (step.equals(procedure.reread()) && !procedure.reread().equals(procedure.begin())) {
      marks.add("reread");
    }
    return marks;
  }
}
