package quarterturn.procedure;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Branch.Fork;
import quarterturn.procedure.Node.Scalar;

/** Reads the ways on from a step, and that some way is always open. */
record ForkReader(Faults faults, References references) {
  static final List<String> KEYS = List.of("go", "branches");
  private static final int LONGEST_CONDITION = 400;

  /** The ways on from a step, by {@code go} or {@code branches}; null with a fault where none. */
  @Nullable Fork read(Fields fields, String what) {
    if (fields.has("go") && fields.has("branches")) {
      faults.add(
          fields.key("branches"),
          what + " has both go and branches here; only one can say the way");
      return null;
    }
    if (fields.has("branches")) {
      return branches(fields);
    }
    if (!fields.has("go")) {
      faults.add(fields.mark(), what + " needs go, or branches, to say the way on");
      return null;
    }
    Scalar go = way(fields.optional("go"));
    return go == null ? null : Fork.to(go.text());
  }

  /** A step to go to, noted for the check that it exists. */
  @Nullable Scalar way(@Nullable Node node) {
    Scalar go = new Scalars(faults).scalar(node);
    references.way(go);
    return go;
  }

  private @Nullable Fork branches(Fields fields) {
    List<Node> items = new Scalars(faults).items(fields.optional("branches"));
    List<Branch> branches = new ArrayList<>();
    String otherwise = null;
    boolean whole = !items.isEmpty();
    for (int i = 0; i < items.size(); i++) {
      Fields branch =
          Fields.of(items.get(i), "a branch", List.of("when", "go", "otherwise"), faults);
      if (branch == null) {
        whole = false;
      } else if (branch.has("otherwise")) {
        Scalar go = way(branch.optional("otherwise"));
        otherwise = go == null ? "" : go.text();
        alone(branch, i == items.size() - 1);
      } else {
        Branch one = branch(branch);
        whole &= one != null;
        if (one != null) {
          branches.add(one);
        }
      }
    }
    if (items.isEmpty() && fields.optional("branches") instanceof Node.Sequence list) {
      faults.add(list.mark(), "the list of branches is empty");
    }
    if (whole && otherwise == null) {
      covered(branches, fields.key("branches"));
    }
    return whole ? new Fork(branches, otherwise) : null;
  }

  private void alone(Fields branch, boolean last) {
    if (branch.has("when") || branch.has("go")) {
      faults.add(branch.mark(), "otherwise stands alone, without when and go");
    } else if (!last) {
      faults.add(branch.mark(), "otherwise must be the last branch; those below are never reached");
    }
  }

  private @Nullable Branch branch(Fields branch) {
    Scalar when = new Scalars(faults).scalar(branch.required("when"));
    Scalar go = way(branch.required("go"));
    branch.end();
    Condition condition = when == null ? null : condition(when);
    return condition == null || go == null ? null : new Branch(condition, go.text(), branch.mark());
  }

  private @Nullable Condition condition(Scalar when) {
    if (when.text().length() > LONGEST_CONDITION) {
      faults.add(when.mark(), "a condition has at most " + LONGEST_CONDITION + " letters");
      return null;
    }
    try {
      ConditionParser.Parsed parsed = ConditionParser.parse(when.text());
      references.condition(when, parsed.named());
      return parsed.condition();
    } catch (Misread e) {
      faults.add(Place.within(faults.source(), when, e.at()), String.valueOf(e.getMessage()));
      return null;
    }
  }

  /** Without {@code otherwise}, only the six verdicts on one quantity leave no gap. */
  private void covered(List<Branch> branches, Mark mark) {
    Set<Verdict> open = EnumSet.allOf(Verdict.class);
    Set<Quantity> quantities = EnumSet.noneOf(Quantity.class);
    boolean plain = true;
    for (Branch branch : branches) {
      if (branch.when() instanceof Condition.Against against) {
        open.remove(against.verdict());
        quantities.add(against.quantity());
      } else {
        plain = false;
      }
    }
    if (!plain || quantities.size() != 1) {
      faults.add(
          mark,
          "these branches can all fail; end them with otherwise. Only branches that name all six"
              + " verdicts on one quantity can do without");
    } else if (!open.isEmpty()) {
      String quantity = quantities.iterator().next().word();
      String gaps =
          open.stream()
              .map(verdict -> quantity + " " + verdict.words())
              .collect(Collectors.joining(", "));
      faults.add(mark, "no branch covers: " + gaps + ". Add them, or end with otherwise");
    }
  }
}
