package quarterturn.procedure.read;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Branch;
import quarterturn.procedure.Branch.Fork;
import quarterturn.procedure.Mark;
import quarterturn.procedure.Slip;
import quarterturn.procedure.condition.Condition;
import quarterturn.procedure.read.clause.ConditionParser;
import quarterturn.procedure.read.clause.MisreadException;
import quarterturn.procedure.read.form.Keys;
import quarterturn.procedure.read.yaml.Faults;
import quarterturn.procedure.read.yaml.MappingKeys;
import quarterturn.procedure.read.yaml.Node;
import quarterturn.procedure.read.yaml.Node.Scalar;
import quarterturn.procedure.read.yaml.Scalars;
import quarterturn.procedure.read.yaml.TextPosition;

/** Reads the ways on from a step and their conditions, and notes the steps that these name. */
record ForkReader(Faults faults, References references) {
  static final List<String> KEYS = List.of(Keys.GO, Keys.BRANCHES);

  private static final int LONGEST = 400;

  /** The ways on from a step, by {@code go} or {@code branches}; null with a fault where none. */
  @Nullable Fork read(MappingKeys fields, String what) {
    KEYS.forEach(fields::optional);
    return fork(fields, what);
  }

  /** The ways on from a step, where {@code go} or {@code branches} may be asked for elsewhere. */
  @Nullable Fork fork(MappingKeys fields, String what) {
    if (fields.has("go") && fields.has("branches")) {
      faults.add(
          Slip.WAY_ON,
          fields.key("branches"),
          what + " has both go and branches",
          "Keep the one that says the way on");
      return null;
    }
    if (fields.has("branches")) {
      return branches(fields.optional("branches"));
    }
    if (!fields.has("go")) {
      faults.add(
          Slip.WAY_ON,
          fields.mark(),
          what + " does not say the way on",
          "Add go: and the id of a step, or branches");
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

  private @Nullable Fork branches(@Nullable Node list) {
    List<Node> items = new Scalars(faults).items(list);
    List<Branch> branches = new ArrayList<>();
    String otherwise = null;
    boolean whole = !items.isEmpty();
    for (int i = 0; i < items.size(); i++) {
      MappingKeys branch = MappingKeys.of(items.get(i), "a branch", faults);
      boolean rest = branch.has("otherwise");
      Node when = branch.value("when", !rest);
      Node to = branch.value("go", !rest);
      Scalar last = way(branch.optional("otherwise"));
      branch.end();
      if (rest) {
        otherwise = last == null ? "" : last.text();
        alone(branch, i == items.size() - 1);
      } else {
        Branch one = branch(branch, when, to);
        whole &= one != null;
        if (one != null) {
          branches.add(one);
        }
      }
    }
    if (items.isEmpty() && list instanceof Node.Sequence) {
      faults.add(
          Slip.WAY_ON,
          list.mark(),
          "the list of branches is empty",
          "Add a branch with when and go, or write go instead");
    }
    return whole ? new Fork(branches, otherwise) : null;
  }

  private void alone(MappingKeys branch, boolean last) {
    if (branch.has("when") || branch.has("go")) {
      faults.add(
          Slip.WAY_ON,
          branch.mark(),
          "a branch with otherwise and with when or go",
          "Write otherwise: and the id of a step, and nothing more");
    } else if (!last) {
      faults.add(
          Slip.WAY_ON,
          branch.mark(),
          "otherwise stands before other branches, which are never reached",
          "Make it the last branch");
    }
  }

  private @Nullable Branch branch(MappingKeys branch, @Nullable Node when, @Nullable Node to) {
    Condition condition = condition(when);
    Scalar go = way(to);
    return condition == null || go == null ? null : new Branch(condition, go.text(), branch.mark());
  }

  /** The condition, or null with a fault at the word that does not fit. */
  @Nullable Condition condition(@Nullable Node node) {
    Scalar when = new Scalars(faults).scalar(node);
    if (when == null) {
      return null;
    }
    if (when.text().length() > LONGEST) {
      faults.add(
          Slip.BAD_CONDITION,
          when.mark(),
          "a condition of more than " + LONGEST + " letters",
          "Split it over several branches");
      return null;
    }
    try {
      ConditionParser.Parsed parsed = ConditionParser.parse(when.text(), BoundsReader::of);
      references.condition(when, parsed.named());
      return parsed.condition();
    } catch (MisreadException e) {
      Mark mark = TextPosition.within(faults.source(when.mark()), when, e.at());
      faults.add(Slip.BAD_CONDITION, mark, e.wrong(), e.mend());
      return null;
    }
  }
}
