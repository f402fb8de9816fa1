package quarterturn.procedure.read;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Mark;
import quarterturn.procedure.read.yaml.Node;
import quarterturn.procedure.read.yaml.Node.Entry;
import quarterturn.procedure.read.yaml.Node.Mapping;
import quarterturn.procedure.read.yaml.Node.Scalar;
import quarterturn.procedure.read.yaml.Node.Sequence;

/**
 * Writes out parts that are gone through {@code only if} a condition holds: a compute step at their
 * beginning leads around the whole part where it does not.
 */
final class Parts {
  static final String PART = "part";
  static final String CONDITION = "only if";

  private Parts() {}

  /** The entries of a list of steps that all have ids, with the conditions of parts as steps. */
  static List<Node> of(List<Node> entries) {
    Deque<Node> written = new ArrayDeque<>();
    // From the end, so that a part that is passed over leads to the condition of the next.
    Scalar next = null;
    Scalar after = null;
    for (int i = entries.size() - 1; i >= 0; i--) {
      Node entry = entries.get(i);
      Scalar id = InOrder.id(entry);
      next = id == null ? next : id;
      Entry when = condition(entry);
      if (when != null && next != null) {
        Mapping gate = gate(next, when, after);
        written.addFirst(gate);
        next = InOrder.id(gate);
      }
      written.addFirst(when == null ? entry : ((Mapping) entry).without(CONDITION));
      after = isPart(entry) ? next : after;
    }
    return List.copyOf(written);
  }

  private static boolean isPart(Node entry) {
    return entry instanceof Mapping mapping && mapping.entries().containsKey(PART);
  }

  private static @Nullable Entry condition(Node entry) {
    return isPart(entry) ? ((Mapping) entry).entries().get(CONDITION) : null;
  }

  private static Mapping gate(Scalar first, Entry when, @Nullable Scalar after) {
    Mark mark = when.key();
    Mapping none = new Mapping(Map.of(), mark);
    List<Node> branches = new ArrayList<>();
    Entry go = new Entry(mark, Scalar.at(mark, first.text()));
    branches.add(none.with("when", when).with(ForkReader.GO, go));
    if (after != null) {
      branches.add(none.with("otherwise", new Entry(mark, Scalar.at(mark, after.text()))));
    }
    String id = Unnamed.after(first.text(), "-only-if");
    return none.with("compute", new Entry(mark, Scalar.at(mark, id)))
        .with("branches", new Entry(mark, new Sequence(branches, mark)));
  }
}
