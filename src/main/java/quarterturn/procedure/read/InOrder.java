package quarterturn.procedure.read;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.read.yaml.Node;
import quarterturn.procedure.read.yaml.Node.Entry;
import quarterturn.procedure.read.yaml.Node.Mapping;
import quarterturn.procedure.read.yaml.Node.Scalar;
import quarterturn.procedure.read.yaml.Node.Sequence;

/**
 * Writes out the way on where a sheet leaves it out: the step that stands next. A step, an option
 * and a branch each go on to it unless they say otherwise. What is added stands at the place of
 * what it belongs to, so that a fault in it points at what was written.
 */
final class InOrder {
  /** The kinds of step that never go on by themselves. */
  private static final Set<String> ENDS = Set.of("done", "hand-over", "turn");

  private InOrder() {}

  /** The entries of a list of steps, parts among them, with every way on that has a next step. */
  static List<Node> of(List<Node> entries) {
    List<Node> written = new ArrayList<>(entries);
    Scalar next = null;
    for (int i = entries.size() - 1; i >= 0; i--) {
      Scalar id = id(entries.get(i));
      if (id != null && next != null) {
        written.set(i, onward((Mapping) entries.get(i), next));
      }
      next = id == null ? next : id;
    }
    return written;
  }

  /** The id of the first step, or null where there is none. */
  static @Nullable Scalar first(List<Node> entries) {
    return entries.stream().map(InOrder::id).filter(Objects::nonNull).findFirst().orElse(null);
  }

  /** The id of a step, the value of its first key; null of a part and of what is no step. */
  static @Nullable Scalar id(Node entry) {
    if (!(entry instanceof Mapping step) || step.first().equals(Parts.PART)) {
      return null;
    }
    Entry first = step.entries().get(step.first());
    return first != null && first.value() instanceof Scalar id && !id.text().isEmpty() ? id : null;
  }

  private static Mapping onward(Mapping step, Scalar next) {
    String kind = step.first();
    if (kind.equals("choose")) {
      return each(step, "options", "is", next);
    }
    if (step.entries().containsKey("branches")) {
      return each(step, "branches", "when", next);
    }
    return ENDS.contains(kind) ? step : with(step, kind, next);
  }

  /** The step with a way on for each piece of a list that has a key, and none yet. */
  private static Mapping each(Mapping step, String list, String key, Scalar next) {
    Entry entry = step.entries().get(list);
    if (entry == null || !(entry.value() instanceof Sequence pieces)) {
      return step;
    }
    List<Node> written = new ArrayList<>();
    for (Node piece : pieces.items()) {
      boolean one = piece instanceof Mapping mapping && mapping.entries().containsKey(key);
      written.add(one ? with((Mapping) piece, key, next) : piece);
    }
    return step.with(list, new Entry(entry.key(), new Sequence(written, pieces.mark())));
  }

  /** A piece with a way on, at the place of the key {@code at}, where it has none. */
  private static Mapping with(Mapping piece, String at, Scalar next) {
    Entry entry = piece.entries().get(at);
    return entry == null || piece.entries().containsKey(ForkReader.GO)
        ? piece
        : piece.with(ForkReader.GO, new Entry(entry.key(), Scalar.at(entry.key(), next.text())));
  }
}
