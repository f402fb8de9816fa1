package quarterturn.procedure.read.form;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import quarterturn.procedure.Mark;
import quarterturn.procedure.read.yaml.Node;
import quarterturn.procedure.read.yaml.Node.Entry;
import quarterturn.procedure.read.yaml.Node.Mapping;
import quarterturn.procedure.read.yaml.Node.Scalar;
import quarterturn.procedure.read.yaml.Node.Sequence;

/** Writes out the answers of a choice, and cases. */
final class Shorthand {
  /** What stands between an answer and the step that it leads to. */
  private static final String ARROW = " -> ";

  private static final String WHEN = "when";

  private Shorthand() {}

  /**
   * A step with its answers as options and its cases as branches, and what an end or a call is
   * named after.
   */
  static Mapping step(Mapping step) {
    if (step.value(Keys.ANSWERS) instanceof Sequence list) {
      return renamed(step, Keys.ANSWERS, Keys.OPTIONS, each(list, Shorthand::option));
    }
    Entry branches = step.entries().get(Keys.BRANCHES);
    if (branches != null && branches.value() instanceof Sequence list) {
      return ended(
          step.with(Keys.BRANCHES, new Entry(branches.key(), each(list, Shorthand::branch))));
    }
    return ended(step);
  }

  private static Sequence each(Sequence list, UnaryOperator<Node> written) {
    List<Node> pieces = new ArrayList<>(list.items());
    pieces.replaceAll(written);
    return new Sequence(pieces, list.mark());
  }

  private static Mapping ended(Mapping step) {
    Entry id = step.entries().get(step.first());
    String named =
        Keys.ENDS.contains(step.first())
            ? "outcome"
            : step.first().equals("call") ? "procedure" : "";
    return id == null || named.isEmpty() || step.entries().containsKey(named)
        ? step
        : step.with(named, id);
  }

  private static Mapping renamed(Mapping step, String key, String as, Node value) {
    Map<String, Entry> all = new LinkedHashMap<>();
    step.entries()
        .forEach(
            (one, entry) ->
                all.put(
                    one.equals(key) ? as : one,
                    one.equals(key) ? new Entry(entry.key(), value) : entry));
    return new Mapping(all, step.mark());
  }

  /** {@code - sound: Nothing of the kind -> strings}, or {@code - not sure}, as an option. */
  private static Node option(Node answer) {
    if (answer instanceof Scalar scalar && scalar.text().equals(Keys.NOT_SURE)) {
      return unsure(scalar.mark(), Scalar.at(scalar.mark(), "not-sure"));
    }
    if (!(answer instanceof Mapping mapping) || mapping.first().equals("is")) {
      return answer;
    }
    Entry first = mapping.entries().get(mapping.first());
    if (first == null || !(first.value() instanceof Scalar said)) {
      return answer;
    }
    if (mapping.first().equals(Keys.NOT_SURE)) {
      return unsure(first.key(), said);
    }
    Mark key = first.key();
    int arrow = said.text().lastIndexOf(ARROW);
    Node label = arrow < 0 ? said : Scalar.at(said.mark(), said.text().substring(0, arrow));
    Map<String, Entry> all = new LinkedHashMap<>();
    all.put("is", new Entry(key, Scalar.at(key, mapping.first())));
    all.put("label", new Entry(key, label));
    mapping.without(mapping.first()).entries().forEach(all::put);
    if (arrow >= 0) {
      String to = said.text().substring(arrow + ARROW.length());
      all.put(Keys.GO, new Entry(key, Scalar.at(said.mark(), to)));
    }
    return new Mapping(all, mapping.mark());
  }

  private static Mapping unsure(Mark mark, Scalar to) {
    return new Mapping(Map.of(), mark)
        .with("is", new Entry(mark, Scalar.at(mark, "unsure")))
        .with("label", new Entry(mark, Scalar.at(mark, "I am not sure")))
        .with(Keys.GO, new Entry(mark, to));
  }

  /**
   * Cases as compute steps. With an {@code otherwise} the first case that fits counts, so that each
   * is a step of its own.
   *
   * @param ids ids for the steps after the first
   */
  static List<Mapping> cases(Mapping cases, StepIds ids) {
    Entry first = cases.entries().get(Keys.CASES);
    Entry id = cases.entries().get(Keys.ID);
    if (first == null || id == null) {
      return List.of(cases);
    }
    Mapping head = cases.without(Keys.CASES).without(Keys.ID);
    if (!(first.value() instanceof Sequence list)) {
      return List.of(compute(head, id, first, first.value()));
    }
    List<Node> branches = new ArrayList<>(list.items());
    branches.replaceAll(Shorthand::branch);
    int last = branches.size() - 1;
    boolean chain =
        last > 1
            && branches.get(last) instanceof Mapping rest
            && rest.entries().containsKey(Keys.OTHERWISE);
    if (!chain) {
      return List.of(compute(head, id, first, new Sequence(branches, list.mark())));
    }
    List<Mapping> steps = new ArrayList<>();
    String behind = "behind " + ((Scalar) id.value()).text();
    branches.replaceAll(branch -> branch instanceof Mapping one ? past(one, behind) : branch);
    Entry now = id;
    for (Node branch : branches.subList(0, last)) {
      boolean end = branch == branches.get(last - 1);
      Mark mark = branch.mark();
      String further = ((Scalar) id.value()).text();
      Entry next = end ? now : new Entry(mark, Scalar.at(mark, ids.free(further)));
      Mapping none = new Mapping(Map.of(), mark);
      Node rest = end ? branches.get(last) : none.with(Keys.OTHERWISE, next);
      steps.add(compute(head, now, first, new Sequence(List.of(branch, rest), mark)));
      now = next;
    }
    steps.add(InOrder.label(cases.mark(), behind, null));
    return steps;
  }

  /** A branch that goes on behind the whole of the cases. */
  private static Mapping past(Mapping branch, String behind) {
    Entry when = branch.entries().get(WHEN);
    Mapping on =
        when == null || branch.entries().containsKey(Keys.GO)
            ? branch
            : branch.with(Keys.GO, new Entry(when.key(), Scalar.at(when.key(), behind)));
    return Targets.replace(
        on, to -> to.text().equals(Keys.GO_ON) ? Scalar.at(to.mark(), behind) : to);
  }

  private static Mapping compute(Mapping head, Entry id, Entry cases, Node branches) {
    Map<String, Entry> all = new LinkedHashMap<>();
    all.put("compute", id);
    all.put(Keys.BRANCHES, new Entry(cases.key(), branches));
    all.putAll(head.entries());
    return new Mapping(all, head.mark());
  }

  /** {@code - relief in target: good} as a branch. */
  private static Node branch(Node item) {
    if (!(item instanceof Mapping mapping) || mapping.entries().size() != 1) {
      return item;
    }
    String key = mapping.first();
    Entry only = mapping.entries().get(key);
    if (only == null || key.equals(WHEN) || key.equals(Keys.OTHERWISE)) {
      return item;
    }
    return new Mapping(Map.of(), mapping.mark())
        .with(WHEN, new Entry(only.key(), Scalar.at(only.key(), key)))
        .with(Keys.GO, only);
  }
}
