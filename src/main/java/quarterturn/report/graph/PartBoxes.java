package quarterturn.report.graph;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import quarterturn.procedure.Procedure;
import quarterturn.procedure.Step;
import quarterturn.report.graph.ProcedureGraph.Box;
import quarterturn.report.graph.ProcedureGraph.Way;
import quarterturn.unit.Counted;

/**
 * Each part of a procedure as one box. Places with the same title are one part.
 *
 * @param ways from each part, at most one to each other part
 */
record PartBoxes(List<Box> boxes, Map<String, List<Way>> ways) {
  /** Most characters that say what leads from one part to another. */
  private static final int LONGEST = 96;

  static PartBoxes of(Procedure procedure) {
    Map<String, List<Step>> parts =
        procedure.steps().values().stream()
            .collect(
                Collectors.groupingBy(
                    step -> step.words().part(), LinkedHashMap::new, Collectors.toList()));
    List<Box> boxes = new ArrayList<>();
    Map<String, List<Way>> ways = new LinkedHashMap<>();
    parts.forEach(
        (title, steps) -> {
          boxes.add(box(procedure, title, steps));
          ways.put(title, ways(procedure, title, steps));
        });
    return new PartBoxes(boxes, ways);
  }

  private static Box box(Procedure procedure, String title, List<Step> steps) {
    Set<String> ids = new LinkedHashSet<>();
    Set<String> blocks = new LinkedHashSet<>();
    Set<String> ends = new LinkedHashSet<>();
    for (Step step : steps) {
      ids.add(step.id());
      blocks.add(StepWords.block(step));
      step.exits().stream()
          .map(Step.Exit::to)
          .filter(to -> procedure.step(to) instanceof Step.End)
          .forEach(ends::add);
    }
    blocks.remove("");
    List<String> marks = ProcedureGraph.marks(procedure, ids);
    if (steps.stream().allMatch(Step.End.class::isInstance)) {
      marks.add("only ends");
    }
    String size = Counted.of(steps.size(), "step");
    String with = blocks.isEmpty() ? "" : "with " + String.join(", ", blocks);
    return new Box(title, size, with, marks, ends);
  }

  private static List<Way> ways(Procedure procedure, String title, List<Step> steps) {
    Map<String, Way> ways = new LinkedHashMap<>();
    for (Step step : steps) {
      for (StepWords.Exit exit : StepWords.reasons(step)) {
        Step next = procedure.step(exit.to());
        String to = next.words().part();
        if (!to.equals(title) && !(next instanceof Step.End)) {
          boolean back = Way.of(procedure, step.id(), exit).back();
          ways.merge(to, new Way(title, exit.words(), to, back), PartBoxes::joined);
        }
      }
    }
    return ways.values().stream().map(PartBoxes::shortened).toList();
  }

  private static Way joined(Way one, Way other) {
    String words =
        one.words().contains(other.words()) ? one.words() : one.words() + "; " + other.words();
    return new Way(one.from(), words, one.to(), one.back() || other.back());
  }

  private static Way shortened(Way way) {
    String words = way.words();
    return words.length() <= LONGEST
        ? way
        : new Way(
            way.from(),
            words.substring(0, words.lastIndexOf(' ', LONGEST)) + " ...",
            way.to(),
            way.back());
  }
}
