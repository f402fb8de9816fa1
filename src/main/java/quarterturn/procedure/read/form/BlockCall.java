package quarterturn.procedure.read.form;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Mark;
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

  /**
   * The steps of the block with what the entry says, under ids that are free. The ways back to the
   * sheet are labels.
   *
   * @param end the name of the place behind the block
   */
  List<Node> steps(StepIds ids, String end) {
    String value = entry.text(entry.first());
    Mapping table = block.mapping("defaults");
    if (!isUse() && !table.entries().containsKey(value)) {
      List<String> known = List.copyOf(table.entries().keySet());
      String wrong = Quote.of(value) + " is nothing to " + entry.first();
      faults.value(entry.mark(), wrong, Quote.allowed(value, known));
      return List.of(InOrder.label(entry.mark(), own(), null));
    }
    Map<String, Entry> all = new LinkedHashMap<>(table.mapping(value).entries());
    all.putAll(entry.without(Keys.THEN).entries());
    Mapping said = new Mapping(all, entry.mark());
    Template own = new Template(name -> value(name, end, said));
    Mapping fallback = block.mapping(Keys.OTHERWISE).each((key, one) -> own.fill(one));
    Template template = new Template(name -> value(name, end, said, fallback));
    List<Node> written = new ArrayList<>();
    for (Node step : block.items(Keys.STEPS)) {
      Node filled = filled(step, said, template);
      if (filled != null) {
        written.add(filled);
      }
    }
    List<Node> steps = new StepIds().of(written);
    Map<String, String> names = new LinkedHashMap<>();
    Set<String> asked = new HashSet<>(Template.names(block));
    for (Node step : block.items(Keys.STEPS)) {
      if (step instanceof Mapping one) {
        Stream.of(GIVEN, NOT_GIVEN)
            .filter(one.entries()::containsKey)
            .map(one::text)
            .forEach(asked::add);
      }
    }
    Mapping open =
        said.without(entry.first())
            .without(Keys.ID)
            .each((key, one) -> asked.contains(key) ? null : one);
    for (int i = 0; i < steps.size(); i++) {
      String id = StepIds.id(steps.get(i));
      String key = id.startsWith(own() + "-") ? id.substring(own().length() + 1) : id;
      open = open.without(key);
      String named = "";
      Entry over = said.entries().get(key);
      if (over != null
          && over.value() instanceof Mapping given
          && steps.get(i) instanceof Mapping step) {
        named = StepIds.id(given);
        Node other = given.value(Keys.ID);
        Mapping changed = step.over(given.without(Keys.ID));
        steps.set(i, at(changed, over.key(), other == null ? over.key() : other.mark()));
      } else if (over != null && isUse() && isEmpty(over.value())) {
        steps.set(i, InOrder.label(over.key(), id, null));
      }
      boolean same = id.isEmpty() || (id.equals(own()) && !isUse());
      names.put(id, !named.isEmpty() ? named : same ? id : ids.free(id));
    }
    names.remove("");
    Set<String> allowed = new LinkedHashSet<>(isUse() ? names.keySet() : asked);
    block.items("says").forEach(one -> allowed.add(one instanceof Scalar key ? key.text() : ""));
    open.entries().forEach((key, one) -> known(key, one, allowed));
    Mapping more = open.each((key, one) -> allowed.contains(key) ? one : null);
    steps.forEach(step -> within(step).forEach(id -> names.putIfAbsent(id, ids.free(id))));
    Map<String, Scalar> results = results(steps, names, end);
    steps.replaceAll(
        step -> !isUse() && StepIds.id(step).equals(own()) ? added((Mapping) step, more) : step);
    return Renaming.of(names, steps).stream().map(step -> result(step, results)).toList();
  }

  /** The step with what the entry says of it. What the block says of it already stays. */
  private Mapping added(Mapping step, Mapping more) {
    return step.over(
        more.each(
            (key, own) -> {
              Node before = step.value(key);
              if (before instanceof Sequence list && own instanceof Sequence further) {
                Map<String, Node> both = new LinkedHashMap<>();
                list.items().forEach(one -> both.put(text(one), one));
                further.items().forEach(one -> both.putIfAbsent(text(one), one));
                return new Sequence(List.copyOf(both.values()), own.mark());
              }
              return before instanceof Mapping ways && own instanceof Mapping others
                  ? others.each((way, to) -> added(way, ways.text(way), to))
                  : own;
            }));
  }

  private static String text(Node item) {
    return item instanceof Scalar scalar ? scalar.text() : "";
  }

  private @Nullable Node added(String way, String before, Node own) {
    if (before.isEmpty() || before.equals(Keys.GO_ON)) {
      return own;
    }
    faults.value(
        own.mark(),
        way + " leads to " + before + " in every " + entry.first(),
        "Take it out: what the block says can only be added to");
    return null;
  }

  /** A step at the place where a sheet speaks of it. */
  private static Mapping at(Mapping step, Mark mark, Mark id) {
    Entry first = new Entry(mark, Scalar.at(id, step.text(step.first())));
    return new Mapping(step.with(step.first(), first).entries(), mark);
  }

  /** The ids that a step gives to those of a block of its own. */
  private static List<String> within(Node step) {
    return step instanceof Mapping form && StepIds.isForm(form)
        ? form.entries().values().stream()
            .map(Entry::value)
            .filter(said -> said instanceof Mapping)
            .map(StepIds::id)
            .filter(id -> !id.isEmpty())
            .toList()
        : List.of();
  }

  /** Whether a key has no value, which takes away what the block says. */
  private static boolean isEmpty(Node value) {
    return value instanceof Scalar scalar && scalar.text().isEmpty();
  }

  private boolean isUse() {
    return entry.first().equals(Keys.USE);
  }

  private String own() {
    return StepIds.id(entry);
  }

  /** A value that is filled in; keys with values are said of a step. */
  private @Nullable Node value(String name, String end, Mapping... said) {
    for (Mapping one : said) {
      Node value = one.value(name);
      if (value != null && one.text(name).equals(Keys.GO_ON)) {
        return Scalar.at(value.mark(), end);
      }
      if (value != null && !(value instanceof Mapping)) {
        return isEmpty(value) ? null : value;
      }
    }
    return limits.apply(name);
  }

  /** A step with its values; a label where it is left out. */
  private static @Nullable Node filled(Node node, Mapping said, Template template) {
    if (!(node instanceof Mapping written)) {
      return node;
    }
    Node step = template.fill(written.without(GIVEN).without(NOT_GIVEN));
    boolean kept = given(written, GIVEN, said, true) && given(written, NOT_GIVEN, said, false);
    return kept || step == null
        ? step
        : InOrder.label(step.mark(), StepIds.id(new StepIds().of(List.of(step)).get(0)), null);
  }

  private static boolean given(Mapping step, String key, Mapping said, boolean wanted) {
    Node value = said.value(step.text(key));
    return !step.entries().containsKey(key)
        || (value != null && !(value instanceof Mapping) && !isEmpty(value)) == wanted;
  }

  private void known(String key, Entry value, Set<String> allowed) {
    if (!allowed.contains(key)) {
      faults.add(
          Slip.UNKNOWN_KEY,
          value.key(),
          isUse()
              ? "the block has no step " + Quote.of(key) + ", and asks for no such value"
              : entry.first() + " knows nothing of " + Quote.of(key),
          Quote.allowed(key, List.copyOf(allowed)));
    }
  }

  /** Where each result of the block leads, by the id that it has now. */
  private Map<String, Scalar> results(List<Node> steps, Map<String, String> names, String end) {
    List<String> known = steps.stream().filter(BlockCall::isResult).map(StepIds::id).toList();
    Map<String, Scalar> results = new LinkedHashMap<>();
    known.forEach(id -> results.put(names.getOrDefault(id, id), Scalar.at(entry.mark(), end)));
    List<String> missing = new ArrayList<>(known);
    for (Node item : isUse() ? entry.items(Keys.THEN) : List.<Node>of()) {
      if (item instanceof Mapping one && one.value(one.first()) instanceof Scalar target) {
        String id = one.first();
        missing.remove(id);
        if (!known.contains(id)) {
          String wrong = "the block has no result " + Quote.of(id);
          faults.add(Slip.UNKNOWN_ID, one.mark(), wrong, Quote.allowed(id, known));
        } else if (!target.text().equals(Keys.GO_ON)) {
          results.put(names.getOrDefault(id, id), target);
        }
      }
    }
    if (isUse() && entry.entries().containsKey(Keys.THEN) && !missing.isEmpty()) {
      faults.add(
          Slip.OPEN_BRANCHES,
          entry.entries().get(Keys.THEN).key(),
          "then does not say where these results lead: " + String.join(", ", missing),
          "Add each of them with the id of a step, or go on");
    }
    return results;
  }

  private static boolean isResult(Node step) {
    return step instanceof Mapping one && one.first().equals("done");
  }

  /** A result of the block as a label; any other step as it is. */
  private static Node result(Node step, Map<String, Scalar> results) {
    return isResult(step) && step instanceof Mapping one
        ? InOrder.label(one.mark(), StepIds.id(one), results.get(StepIds.id(one)))
        : step;
  }
}
