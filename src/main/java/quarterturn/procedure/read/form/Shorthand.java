package quarterturn.procedure.read.form;

import java.util.ArrayList;
import java.util.List;
import quarterturn.procedure.Mark;
import quarterturn.procedure.read.yaml.Node;
import quarterturn.procedure.read.yaml.Node.Mapping;
import quarterturn.procedure.read.yaml.Node.Scalar;
import quarterturn.procedure.read.yaml.Node.Sequence;

/** Writes out the answers of a choice, and cases. */
final class Shorthand {
  /** What stands between an answer and the step that it leads to. */
  private static final String ARROW = "->";

  private static final String WHEN = "when";

  private Shorthand() {}

  /**
   * A step with its answers as options and its cases as branches, and what an end or a call is
   * named after.
   */
  static Mapping step(Mapping step) {
    Mapping written = step;
    if (step.value(Keys.ANSWERS) instanceof Sequence list) {
      written = step.without(Keys.ANSWERS).with(Keys.OPTIONS, list.each(Shorthand::option));
    }
    if (step.value(Keys.BRANCHES) instanceof Sequence list) {
      written = step.with(Keys.BRANCHES, list.each(Shorthand::branch));
    }
    String kind = step.first();
    Node id = step.value(kind);
    String named = Keys.ENDS.contains(kind) ? "outcome" : kind.equals("call") ? "procedure" : "";
    return id == null || named.isEmpty() || step.entries().containsKey(named)
        ? written
        : written.with(named, id);
  }

  /** {@code - sound: Nothing of the kind -> strings}, or {@code - not sure}, as an option. */
  private static Node option(Node answer) {
    if (answer instanceof Scalar scalar && scalar.text().equals(Keys.NOT_SURE)) {
      return option(
          Mapping.at(answer.mark()).with(Keys.NOT_SURE, Scalar.at(answer.mark(), "not-sure")));
    }
    if (!(answer instanceof Mapping mapping) || mapping.first().equals("is")) {
      return answer;
    }
    Node first = mapping.value(mapping.first());
    if (!(first instanceof Scalar said)) {
      return first instanceof Node.Refused ? first : answer;
    }
    Mark mark = mapping.mark();
    boolean unsure = mapping.first().equals(Keys.NOT_SURE);
    int arrow = said.text().lastIndexOf(ARROW);
    Scalar label =
        arrow < 0 ? said : Scalar.at(said.mark(), said.text().substring(0, arrow).strip());
    Scalar to =
        Scalar.at(
            said.mark(), arrow < 0 ? "" : said.text().substring(arrow + ARROW.length()).strip());
    Mapping option =
        Mapping.at(mark)
            .with("is", Scalar.at(mark, unsure ? "unsure" : mapping.first()))
            .with("label", unsure ? Scalar.at(said.mark(), "I am not sure") : label)
            .over(mapping.without(mapping.first()));
    return unsure || arrow >= 0 ? option.with(Keys.GO, unsure ? said : to) : option;
  }

  /**
   * Cases as compute steps. With an {@code otherwise} the first case that fits counts, so that each
   * is a step of its own.
   *
   * @param cases with an id under {@link Keys#ID}
   * @param ids ids for the steps after the first
   */
  static List<Mapping> cases(Mapping cases, StepIds ids) {
    Node list = cases.value(Keys.CASES);
    Mapping head = cases.without(Keys.CASES).without(Keys.ID);
    String id = StepIds.id(cases);
    Mark mark = cases.mark();
    if (list == null) {
      return List.of(cases);
    }
    if (!(list instanceof Sequence written)) {
      return List.of(compute(mark, id, list).over(head));
    }
    List<Node> branches = new ArrayList<>(written.each(Shorthand::branch).items());
    int last = branches.size() - 1;
    boolean chain =
        last > 1
            && branches.get(last) instanceof Mapping rest
            && rest.entries().containsKey(Keys.OTHERWISE);
    if (!chain) {
      return List.of(compute(mark, id, new Sequence(branches, list.mark())).over(head));
    }
    List<Mapping> steps = new ArrayList<>();
    String behind = "behind " + id;
    branches.replaceAll(branch -> branch instanceof Mapping one ? past(one, behind) : branch);
    String now = id;
    for (int i = 0; i < last; i++) {
      Node branch = branches.get(i);
      String next = i == last - 1 ? "" : ids.free(id);
      Node rest =
          i == last - 1
              ? branches.get(last)
              : Mapping.at(mark).with(Keys.OTHERWISE, Scalar.at(branch.mark(), next));
      Mark at = i == 0 ? mark : branch.mark();
      steps.add(compute(at, now, new Sequence(List.of(branch, rest), mark)).over(head));
      now = next;
    }
    steps.add(InOrder.label(mark, behind, null));
    return steps;
  }

  private static Mapping compute(Mark mark, String id, Node branches) {
    return Mapping.at(mark).with("compute", Scalar.at(mark, id)).with(Keys.BRANCHES, branches);
  }

  /** A branch that goes on behind the whole of the cases. */
  private static Mapping past(Mapping branch, String behind) {
    Node when = branch.value(WHEN);
    Mapping on =
        when == null || branch.entries().containsKey(Keys.GO)
            ? branch
            : branch.with(Keys.GO, Scalar.at(when.mark(), behind));
    return Targets.replace(
        on, to -> to.text().equals(Keys.GO_ON) ? Scalar.at(to.mark(), behind) : to);
  }

  /** {@code - relief in target: good} as a branch. */
  private static Node branch(Node item) {
    if (!(item instanceof Mapping mapping) || mapping.entries().size() != 1) {
      return item;
    }
    String key = mapping.first();
    Node.Entry only = mapping.entries().get(key);
    return only == null || key.equals(WHEN) || key.equals(Keys.OTHERWISE)
        ? item
        : Mapping.at(mapping.mark())
            .with(WHEN, Scalar.at(only.key(), key))
            .with(Keys.GO, only.value());
  }
}
