package quarterturn.report.graph;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import quarterturn.procedure.Procedure;
import quarterturn.procedure.Step;
import quarterturn.procedure.Ways;
import quarterturn.unit.Counted;

/**
 * What a drawing of a procedure shows: boxes, each for a step or for a whole part, and the ways
 * between them.
 *
 * @param size how much there is, in words
 * @param ways from each box, also from those that are not drawn, in the file's order
 */
public record ProcedureGraph(
    Procedure procedure, String size, List<Part> parts, Map<String, List<Way>> ways) {
  /** The name that stands for every part. */
  public static final String ALL = "all";

  /**
   * A way from one box to another.
   *
   * @param words the condition, option, feel or time; empty where there is none
   * @param back whether the way closes a loop: {@code to} comes earlier and leads here again
   */
  record Way(String from, String words, String to, boolean back) {
    static Way of(Procedure procedure, String from, StepWords.Exit exit) {
      List<String> order = List.copyOf(procedure.steps().keySet());
      boolean above = order.indexOf(exit.to()) <= order.indexOf(from);
      boolean back = above && Ways.reach(procedure, exit.to(), step -> true).contains(from);
      return new Way(from, exit.words(), exit.to(), back);
    }
  }

  /**
   * What is drawn as one.
   *
   * @param about a quantity, procedure, outcome or blocks; empty for most steps
   * @param marks what else stands out, such as that the work begins there
   * @param ends the ends that a part can lead to
   */
  record Box(String id, String kind, String about, List<String> marks, Set<String> ends) {}

  /** Boxes under one title, which may be empty. */
  record Part(String title, List<Box> boxes) {}

  /** The parts of a procedure; the steps of one that has a single part. */
  public static ProcedureGraph overview(Procedure procedure) {
    PartBoxes parts = PartBoxes.of(procedure);
    if (parts.boxes().size() == 1) {
      return inside(procedure, ALL);
    }
    String size = Counted.of(procedure.steps().size(), "step");
    String begin = procedure.step(procedure.begin()).words().part();
    return new ProcedureGraph(
        procedure,
        size + " in " + parts.boxes().size() + " parts, begins in " + begin,
        parts.boxes().stream().map(box -> new Part("", List.of(box))).toList(),
        parts.ways());
  }

  /**
   * The steps of a part or a block by part; no parts where there is none with this name.
   *
   * @param name a part's title, a block's name, or {@link #ALL}
   */
  public static ProcedureGraph inside(Procedure procedure, String name) {
    Predicate<Step> drawn =
        step ->
            name.equals(ALL)
                || name.equalsIgnoreCase(step.words().part())
                || name.equals(StepWords.block(step));
    List<Part> parts = new ArrayList<>();
    Map<String, List<Way>> ways = new LinkedHashMap<>();
    int boxes = 0;
    for (Step step : procedure.steps().values()) {
      ways.put(
          step.id(),
          StepWords.exits(step).stream().map(exit -> Way.of(procedure, step.id(), exit)).toList());
      if (drawn.test(step)) {
        String part = step.words().part();
        if (parts.isEmpty() || !parts.get(parts.size() - 1).title().equals(part)) {
          parts.add(new Part(part, new ArrayList<>()));
        }
        List<String> marks = marks(procedure, Set.of(step.id()));
        Box box = new Box(step.id(), StepWords.kind(step), StepWords.about(step), marks, Set.of());
        parts.get(parts.size() - 1).boxes().add(box);
        boxes++;
      }
    }
    int all = procedure.steps().size();
    String of = boxes < all ? boxes + " of " : "";
    String size = of + Counted.of(all, "step") + ", begins at " + procedure.begin();
    return new ProcedureGraph(procedure, size, parts, ways);
  }

  /** Every name that has something inside. */
  public static Set<String> names(Procedure procedure) {
    Set<String> names = new LinkedHashSet<>();
    procedure.steps().values().forEach(step -> names.add(step.words().part()));
    procedure.steps().values().forEach(step -> names.add(StepWords.block(step)));
    names.remove("");
    names.add(ALL);
    return names;
  }

  List<Way> from(String box) {
    return ways.getOrDefault(box, List.of());
  }

  /** The boxes that lead to {@code box}, each once, in the file's order. */
  Set<String> into(String box) {
    Set<String> boxes = new LinkedHashSet<>();
    ways.values().stream()
        .flatMap(List::stream)
        .filter(way -> way.to().equals(box))
        .forEach(way -> boxes.add(way.from()));
    return boxes;
  }

  boolean draws(String box) {
    return parts.stream()
        .anyMatch(part -> part.boxes().stream().anyMatch(one -> one.id().equals(box)));
  }

  /** Labels of steps: whether work begins there, and whether tuning again leads there. */
  static List<String> marks(Procedure procedure, Set<String> steps) {
    List<String> marks = new ArrayList<>();
    if (steps.contains(procedure.begin())) {
      marks.add("begin");
    }
    if (steps.contains(procedure.retune()) && !procedure.retune().equals(procedure.begin())) {
      marks.add("retune");
    }
    if (steps.contains(procedure.reread()) && !procedure.reread().equals(procedure.begin())) {
      marks.add("reread");
    }
    return marks;
  }
}
