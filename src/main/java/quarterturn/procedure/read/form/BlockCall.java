package quarterturn.procedure.read.form;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Slip;
import quarterturn.procedure.condition.Quote;
import quarterturn.procedure.read.yaml.Faults;
import quarterturn.procedure.read.yaml.Node;
import quarterturn.procedure.read.yaml.Node.Entry;
import quarterturn.procedure.read.yaml.Node.Mapping;
import quarterturn.procedure.read.yaml.Node.Scalar;
import quarterturn.procedure.read.yaml.Node.Sequence;

/**
 * One entry of a sheet that stands for a block, and the block.
 *
 * <p>What the entry says under the id of one of the block's steps is said of that step. What it
 * says under a name that the block asks for, in the form {@code <name>}, is filled in. The rest is
 * said of the step that has the entry's own id.
 *
 * @param entry the entry, with an id under {@link Keys#ID}
 * @param block the file of the block
 * @param limits the values that a block asks for and no sheet gives
 */
record BlockCall(
    Mapping entry, Mapping block, Function<String, @Nullable Node> limits, Faults faults) {
  private static final String GIVEN = "given";
  private static final String NOT_GIVEN = "not given";

  /** The keys of an entry that are not for its block. */
  private static final Set<String> KEPT = Set.of(Keys.THEN, Keys.ONLY_IF, Keys.UNLESS);

  /**
   * The steps of the block with what the entry says, under ids that are free. The ways back to the
   * sheet are labels.
   *
   * @param end the name of the place behind the block
   */
  List<Node> steps(StepIds ids, String end) {
    if (!(block.value(Keys.STEPS) instanceof Sequence written)) {
      return List.of();
    }
    Map<String, Entry> said = said();
    Map<String, Entry> otherwise =
        block.value(Keys.OTHERWISE) instanceof Mapping rest ? rest.entries() : Map.of();
    Set<String> open = new LinkedHashSet<>(said.keySet());
    Function<String, @Nullable Node> values =
        name -> {
          open.remove(name);
          Entry value = isValue(said, name) ? said.get(name) : otherwise.get(name);
          return value == null ? limits.apply(name) : value.value();
        };
    Template template = new Template(name -> again(values.apply(name), values));
    List<Node> steps = new ArrayList<>();
    for (Node step : written.items()) {
      steps.add(filled(step, said, template));
    }
    steps = new StepIds().of(steps);
    Map<String, String> names = new LinkedHashMap<>();
    for (int i = 0; i < steps.size(); i++) {
      String id = StepIds.id(steps.get(i));
      String key = id.startsWith(own() + "-") ? id.substring(own().length() + 1) : id;
      Entry over = said.get(key);
      boolean given = over != null && over.value() instanceof Mapping;
      if (given && steps.get(i) instanceof Mapping step) {
        open.remove(key);
        steps.set(i, over(step, ((Mapping) over.value()).without(Keys.ID)));
      }
      if (!id.isEmpty()) {
        String named = given ? StepIds.id(((Mapping) over.value())) : "";
        names.put(id, !named.isEmpty() ? named : id.equals(own()) && !isUse() ? id : ids.free(id));
      }
    }
    Map<String, Scalar> results = results(names, end);
    open.remove(entry.first());
    open.remove(Keys.ID);
    steps.replaceAll(
        step ->
            step instanceof Mapping one && StepIds.id(one).equals(own())
                ? main(one, said, open)
                : step);
    steps = Renaming.of(names, steps);
    steps.replaceAll(step -> result(step, results));
    open.forEach(key -> unknown(key, said, names.keySet()));
    return steps;
  }

  /** A value that stands where a sheet says nothing, with what the sheet says filled in. */
  private static @Nullable Node again(
      @Nullable Node value, Function<String, @Nullable Node> values) {
    return value instanceof Scalar ? new Template(values).fill(value) : value;
  }

  /** Whether an entry says a value, not what is said of a step. */
  private static boolean isValue(Map<String, Entry> said, String name) {
    Entry value = said.get(name);
    return value != null && !(value.value() instanceof Mapping);
  }

  private boolean isUse() {
    return entry.first().equals(Keys.USE);
  }

  private String own() {
    return StepIds.id(entry);
  }

  private void unknown(String key, Map<String, Entry> said, Set<String> known) {
    Entry value = said.get(key);
    if (value != null && value.key().file().equals(entry.mark().file())) {
      faults.add(
          Slip.UNKNOWN_KEY,
          value.key(),
          "the block has no step " + Quote.of(key) + ", and asks for no such value",
          Quote.allowed(key, List.copyOf(known)));
    }
  }

  /** What the entry says, over what the block says of such an entry. */
  private Map<String, Entry> said() {
    Map<String, Entry> said = new LinkedHashMap<>();
    if (block.value("defaults") instanceof Mapping table) {
      said.putAll(defaults(table));
    }
    entry
        .entries()
        .forEach(
            (key, value) -> {
              if (!KEPT.contains(key)) {
                said.merge(key, value, BlockCall::over);
              }
            });
    return said;
  }

  private Map<String, Entry> defaults(Mapping table) {
    String value = entry.text(entry.first());
    if (!table.entries().containsKey(value)) {
      String wrong = Quote.of(value) + " is nothing to " + entry.first();
      List<String> known = List.copyOf(table.entries().keySet());
      faults.value(entry.mark(), wrong, Quote.allowed(value, known));
      return Map.of();
    }
    return table.value(value) instanceof Mapping row ? row.entries() : Map.of();
  }

  /** A step with its values; a label where it is left out. */
  private static Node filled(Node node, Map<String, Entry> said, Template template) {
    Node all = node instanceof Mapping m ? m.without(GIVEN).without(NOT_GIVEN) : node;
    Node step = template.fill(all);
    if (!(node instanceof Mapping mapping) || step == null) {
      return node;
    }
    boolean kept = given(mapping, GIVEN, said, true) && given(mapping, NOT_GIVEN, said, false);
    return kept
        ? step
        : InOrder.label(step.mark(), StepIds.id(new StepIds().of(List.of(step)).get(0)), null);
  }

  private static boolean given(Mapping step, String key, Map<String, Entry> said, boolean wanted) {
    return !step.entries().containsKey(key) || isValue(said, step.text(key)) == wanted;
  }

  /** The step with the entry's own id, with what the entry says of it. */
  private static Mapping main(Mapping step, Map<String, Entry> said, Set<String> open) {
    Mapping written = step;
    for (String key : open) {
      Entry own = said.get(key);
      if (own != null) {
        Mapping one = new Mapping(Map.of(key, own), step.mark());
        written = over(written, one);
      }
    }
    open.clear();
    return written;
  }

  private static Mapping over(Mapping step, Mapping given) {
    Mapping written = step;
    for (Map.Entry<String, Entry> own : given.entries().entrySet()) {
      Entry before = step.entries().get(own.getKey());
      Entry now = before == null ? own.getValue() : over(before, own.getValue());
      boolean away = now.value() instanceof Scalar value && value.text().isEmpty();
      written = away ? written.without(own.getKey()) : written.with(own.getKey(), now);
    }
    return written;
  }

  /** A value in place of another; of two mappings, the keys of both. */
  private static Entry over(Entry before, Entry own) {
    return before.value() instanceof Mapping all && own.value() instanceof Mapping more
        ? new Entry(own.key(), over(all, more))
        : own;
  }

  /** Where each result of the block leads, by the id that it has now. */
  private Map<String, Scalar> results(Map<String, String> names, String end) {
    Map<String, Scalar> results = new LinkedHashMap<>();
    names.values().forEach(id -> results.put(id, Scalar.at(entry.mark(), end)));
    if (!isUse() || !(entry.value(Keys.THEN) instanceof Sequence list)) {
      return results;
    }
    for (Node item : list.items()) {
      Entry to = item instanceof Mapping one ? one.entries().get(one.first()) : null;
      String id = item instanceof Mapping one ? one.first() : "";
      if (to == null || !(to.value() instanceof Scalar target)) {
        continue;
      }
      String named = names.get(id);
      if (named == null) {
        faults.add(
            Slip.UNKNOWN_ID,
            to.key(),
            "the block has no result " + Quote.of(id),
            Quote.allowed(id, List.copyOf(names.keySet())));
      } else if (!target.text().equals(Keys.GO_ON)) {
        results.put(named, target);
      }
    }
    return results;
  }

  /** A result of the block as a label; any other step as it is. */
  private static Node result(Node step, Map<String, Scalar> results) {
    return step instanceof Mapping one && one.first().equals("done")
        ? InOrder.label(one.mark(), StepIds.id(one), results.get(StepIds.id(one)))
        : step;
  }
}
