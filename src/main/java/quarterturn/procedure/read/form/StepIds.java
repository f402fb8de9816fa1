package quarterturn.procedure.read.form;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import quarterturn.procedure.read.yaml.Node;
import quarterturn.procedure.read.yaml.Node.Entry;
import quarterturn.procedure.read.yaml.Node.Mapping;
import quarterturn.procedure.read.yaml.Node.Scalar;
import quarterturn.procedure.read.yaml.Scalars;

/**
 * Gives ids to steps that a sheet leaves unnamed. A step whose text stands where its id would is
 * named by its first words: {@code tell: Tune every string.} is the step {@code tune-every-string}.
 * A form is named by its key, and cases after the step before them.
 */
final class StepIds {
  /** How many words of a text make an id. */
  private static final int WORDS = 4;

  /** The longest id that is made, so that a number fits behind it. */
  private static final int LONGEST = 36;

  private final Set<String> taken = new HashSet<>();
  private final Map<String, Integer> numbers = new HashMap<>();

  /**
   * The entries of a list, parts among them, every step with an id as its first value and every
   * form with one under {@link Keys#ID}.
   */
  List<Node> of(List<Node> entries) {
    entries.forEach(entry -> taken.add(id(entry)));
    List<Node> named = new ArrayList<>();
    String before = "";
    for (Node entry : entries) {
      Node step = entry instanceof Mapping mapping ? named(mapping, before) : entry;
      before = id(step).isEmpty() ? before : id(step);
      named.add(step);
    }
    return named;
  }

  /** The id of a step or form, or nothing where it has none yet. */
  static String id(Node entry) {
    if (!(entry instanceof Mapping step) || step.entries().isEmpty()) {
      return "";
    }
    boolean first = Keys.KINDS.contains(step.first()) || step.first().equals(InOrder.LABEL);
    String id = step.text(step.entries().containsKey(Keys.ID) || !first ? Keys.ID : step.first());
    return Scalars.isId(id) ? id : "";
  }

  private Mapping named(Mapping step, String before) {
    Entry first = step.entries().get(step.first());
    String kind = step.first();
    if (first == null || kind.equals(Keys.PART)) {
      return step;
    }
    if (kind.equals(Keys.CASES)) {
      String made = before.isEmpty() ? Keys.CASES : after(before, "-then");
      return step.entries().containsKey(Keys.ID) ? step : identified(step, first, made);
    }
    if (isForm(step)) {
      return step.entries().containsKey(Keys.ID) ? step : identified(step, first, form(step));
    }
    if (!(first.value() instanceof Scalar said)
        || !Keys.KINDS.contains(kind)
        || Scalars.isId(said.text())
        || said.text().isEmpty()
        || step.entries().containsKey(Keys.TEXT)) {
      return step;
    }
    Entry id = step.entries().get(Keys.ID);
    id = id == null ? new Entry(first.key(), made(first, slug(said.text()))) : id;
    Map<String, Entry> all = new LinkedHashMap<>();
    all.put(kind, id);
    all.put(Keys.TEXT, first);
    step.entries().forEach(all::putIfAbsent);
    all.remove(Keys.ID);
    return new Mapping(all, step.mark());
  }

  /** Whether an entry stands for a block. */
  static boolean isForm(Mapping entry) {
    Entry first = entry.entries().get(entry.first());
    return entry.first().equals(Keys.USE)
        || (Keys.FORMS.containsKey(entry.first())
            && first != null
            && first.value() instanceof Scalar value
            && !(Keys.KINDS.contains(entry.first()) && Scalars.isId(value.text())));
  }

  private static String form(Mapping form) {
    String word = form.text(form.first());
    return Scalars.isId(word) ? word : form.first();
  }

  private Mapping identified(Mapping step, Entry first, String wanted) {
    return step.with(Keys.ID, new Entry(first.key(), made(first, wanted)));
  }

  private Scalar made(Entry at, String wanted) {
    return Scalar.at(at.key(), free(wanted));
  }

  /** An id that no step has yet: the one wanted, or that with a number. */
  String free(String wanted) {
    String id = wanted;
    while (!taken.add(id)) {
      id = after(wanted, "-" + numbers.merge(wanted, 2, (last, two) -> last + 1));
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
