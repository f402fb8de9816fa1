package quarterturn.procedure.read;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import quarterturn.procedure.Mark;
import quarterturn.procedure.read.yaml.Node;
import quarterturn.procedure.read.yaml.Node.Entry;
import quarterturn.procedure.read.yaml.Node.Mapping;
import quarterturn.procedure.read.yaml.Node.Scalar;
import quarterturn.procedure.read.yaml.Scalars;

/**
 * Gives ids to steps that a sheet leaves unnamed. A step whose text stands where its id would is
 * named by its first words: {@code tell: Tune every string.} is the step {@code tune-every-string}.
 * What comes after {@code cases} is a compute step, named after the step before it.
 */
final class Unnamed {
  /** What stands before a list of branches that asks nothing. */
  static final String CASES = "cases";

  /** How many words of a text make an id. */
  private static final int WORDS = 4;

  /** The longest id that is made, so that a number fits behind it. */
  private static final int LONGEST = 36;

  private final Set<String> taken = new HashSet<>();

  private Unnamed() {}

  /** The entries of a list of steps, parts among them, every step with an id. */
  static List<Node> of(List<Node> entries) {
    Unnamed unnamed = new Unnamed();
    entries.forEach(unnamed::take);
    List<Node> named = new ArrayList<>();
    String before = "";
    for (Node entry : entries) {
      Node step = entry instanceof Mapping mapping ? unnamed.named(mapping, before) : entry;
      before = id(step).isEmpty() ? before : id(step);
      named.add(step);
    }
    return named;
  }

  private void take(Node entry) {
    taken.add(id(entry));
  }

  /** The id of a step, or nothing where it has none yet. */
  private static String id(Node entry) {
    if (!(entry instanceof Mapping step) || step.entries().isEmpty()) {
      return "";
    }
    Map.Entry<String, Entry> first = step.entries().entrySet().iterator().next();
    boolean named =
        StepReader.KINDS.contains(first.getKey())
            && first.getValue().value() instanceof Scalar value
            && Scalars.isId(value.text());
    return named ? ((Scalar) first.getValue().value()).text() : "";
  }

  private Mapping named(Mapping step, String before) {
    if (step.entries().isEmpty()) {
      return step;
    }
    Map.Entry<String, Entry> first = step.entries().entrySet().iterator().next();
    Mark key = first.getValue().key();
    if (first.getKey().equals(CASES)) {
      Entry id =
          new Entry(key, Scalar.at(key, free(before.isEmpty() ? CASES : after(before, "-then"))));
      return begun(step, "compute", id, "branches", first.getValue());
    }
    boolean text =
        StepReader.KINDS.contains(first.getKey())
            && first.getValue().value() instanceof Scalar value
            && !value.text().isEmpty()
            && !Scalars.isId(value.text())
            && !step.entries().containsKey("text");
    if (!text) {
      return step;
    }
    String words = slug(((Scalar) first.getValue().value()).text());
    Entry id = new Entry(key, Scalar.at(key, free(words)));
    return begun(step, first.getKey(), id, "text", first.getValue());
  }

  /** The step with its first key taken apart into a kind with an id, and a key with what stood. */
  private static Mapping begun(Mapping step, String kind, Entry id, String key, Entry value) {
    Map<String, Entry> all = new LinkedHashMap<>();
    all.put(kind, id);
    all.put(key, value);
    step.entries().forEach(all::putIfAbsent);
    all.remove(CASES);
    return new Mapping(all, step.mark());
  }

  private String free(String wanted) {
    String id = wanted;
    for (int i = 2; !taken.add(id); i++) {
      id = wanted + "-" + i;
    }
    return id;
  }

  private static String slug(String text) {
    String words =
        Arrays.stream(text.toLowerCase(Locale.ROOT).split("[^a-z0-9]+"))
            .filter(word -> !word.isEmpty())
            .limit(WORDS)
            .collect(Collectors.joining("-"));
    return words.isEmpty() ? "step" : after(words, "");
  }

  /** An id with more behind it, cut where it would be too long. */
  static String after(String id, String more) {
    int length = Math.min(id.length(), LONGEST - more.length());
    return id.substring(0, length).replaceAll("-+$", "") + more;
  }
}
