package quarterturn.procedure.read;

import java.util.ArrayList;
import java.util.LinkedHashMap;
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
    List<Node> written = new ArrayList<>();
    for (int i = 0; i < entries.size(); i++) {
      Entry when = condition(entries.get(i));
      written.add(when == null ? entries.get(i) : plain((Mapping) entries.get(i)));
      Scalar first = when == null ? null : InOrder.first(entries.subList(i, entries.size()));
      if (when != null && first != null) {
        written.add(gate(first, when, after(entries, i)));
      }
    }
    return written;
  }

  private static @Nullable Entry condition(Node entry) {
    return entry instanceof Mapping part && part.entries().containsKey(PART)
        ? part.entries().get(CONDITION)
        : null;
  }

  private static Mapping plain(Mapping part) {
    Map<String, Entry> entries = new LinkedHashMap<>(part.entries());
    entries.remove(CONDITION);
    return new Mapping(entries, part.mark());
  }

  /** The first step behind the part that begins at a place, or null where none comes. */
  private static @Nullable Scalar after(List<Node> entries, int part) {
    for (int i = part + 1; i < entries.size(); i++) {
      if (entries.get(i) instanceof Mapping next && next.entries().containsKey(PART)) {
        return InOrder.first(entries.subList(i, entries.size()));
      }
    }
    return null;
  }

  private static Mapping gate(Scalar first, Entry when, @Nullable Scalar after) {
    Mark mark = when.key();
    List<Node> branches = new ArrayList<>();
    Entry go = new Entry(mark, at(first.text(), mark));
    branches.add(new Mapping(entries("when", when, "go", go), mark));
    if (after != null) {
      Entry otherwise = new Entry(mark, at(after.text(), mark));
      branches.add(new Mapping(Map.of("otherwise", otherwise), mark));
    }
    Entry id = new Entry(mark, at(first.text() + "-only-if", mark));
    Entry list = new Entry(mark, new Sequence(branches, mark));
    return new Mapping(entries("compute", id, "branches", list), mark);
  }

  private static Map<String, Entry> entries(String one, Entry first, String two, Entry second) {
    Map<String, Entry> entries = new LinkedHashMap<>();
    entries.put(one, first);
    entries.put(two, second);
    return entries;
  }

  private static Scalar at(String text, Mark mark) {
    return new Scalar(text, text, mark);
  }
}
