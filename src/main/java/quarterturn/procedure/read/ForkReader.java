package quarterturn.procedure.read;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Branch;
import quarterturn.procedure.Branch.Fork;
import quarterturn.procedure.Condition;
import quarterturn.procedure.Slip;
import quarterturn.procedure.read.Node.Scalar;

/** Reads the ways on from a step. */
record ForkReader(Faults faults, References references) {
  static final List<String> KEYS = List.of("go", "branches");

  /** The ways on from a step, by {@code go} or {@code branches}; null with a fault where none. */
  @Nullable Fork read(MappingKeys fields, String what) {
    if (fields.has("go") && fields.has("branches")) {
      faults.add(
          Slip.WAY_ON,
          fields.key("branches"),
          what + " has both go and branches",
          "Keep the one that says the way on");
      return null;
    }
    if (fields.has("branches")) {
      return branches(fields);
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

  private @Nullable Fork branches(MappingKeys fields) {
    List<Node> items = new Scalars(faults).items(fields.optional("branches"));
    List<Branch> branches = new ArrayList<>();
    String otherwise = null;
    boolean whole = !items.isEmpty();
    for (int i = 0; i < items.size(); i++) {
      MappingKeys branch =
          MappingKeys.of(items.get(i), "a branch", List.of("when", "go", "otherwise"), faults);
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

  private @Nullable Branch branch(MappingKeys branch) {
    Condition condition = new ConditionReader(faults, references).read(branch.required("when"));
    Scalar go = way(branch.required("go"));
    branch.end();
    return condition == null || go == null ? null : new Branch(condition, go.text(), branch.mark());
  }
}
