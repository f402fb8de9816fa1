package quarterturn.procedure.read.form;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
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
    if (!(block.value(Keys.STEPS) instanceof Sequence written)) {
      return List.of();
    }
    Map<String, Entry> all = new LinkedHashMap<>(defaults().entries());
    all.putAll(entry.without(Keys.THEN).entries());
    Mapping said =
        new Mapping(all, entry.mark())
            .each((key, value) -> goesOn(value) ? Scalar.at(value.mark(), end) : value);
    Template own = new Template(name -> value(name, said));
    Mapping rest =
        block.value(Keys.OTHERWISE) instanceof Mapping one ? one : Mapping.at(block.mark());
    Mapping fallback = rest.each((key, value) -> own.fill(value));
    Template template = new Template(name -> value(name, said, fallback));
    List<Node> steps = new StepIds().of(written.each(one -> filled(one, said, template)).items());
    Map<String, String> names = new LinkedHashMap<>();
    Set<String> asked = Template.names(written);
    Mapping open =
        said.without(entry.first()).each((key, value) -> asked.contains(key) ? null : value);
    for (int i = 0; i < steps.size(); i++) {
      String id = StepIds.id(steps.get(i));
      String key = id.startsWith(own() + "-") ? id.substring(own().length() + 1) : id;
      open = open.without(key);
      String named = "";
      if (!isUse() && steps.get(i) instanceof Mapping step) {
        steps.set(i, at(step, entry.mark(), entry.mark()));
      }
      Entry over = said.entries().get(key);
      if (over != null
          && over.value() instanceof Mapping given
          && steps.get(i) instanceof Mapping step) {
        named = StepIds.id(given);
        Mark place = over.key();
        Node other = given.value(Keys.ID);
        Mapping more = step.over(given.without(Keys.ID));
        steps.set(i, at(more, place, other == null ? place : other.mark()));
      }
      boolean same = id.isEmpty() || (id.equals(own()) && !isUse());
      names.put(id, !named.isEmpty() ? named : same ? id : ids.free(id));
    }
    Mapping more = open.without(Keys.ID);
    List<String> known = new ArrayList<>(names.keySet());
    known.addAll(asked);
    steps.forEach(step -> within(step).forEach(id -> names.putIfAbsent(id, ids.free(id))));
    Map<String, Scalar> results = results(steps, names, end);
    if (isUse()) {
      more.entries().forEach((key, value) -> unknown(key, value, known));
    } else {
      steps.replaceAll(step -> StepIds.id(step).equals(own()) ? ((Mapping) step).over(more) : step);
    }
    return Renaming.of(names, steps).stream().map(step -> result(step, results)).toList();
  }

  /** Whether a key has no value, which takes away what the block says. */
  private static boolean isEmpty(Node value) {
    return value instanceof Scalar scalar && scalar.text().isEmpty();
  }

  private static boolean goesOn(Node value) {
    return value instanceof Scalar to && to.text().equals(Keys.GO_ON);
  }

  /** A step at the place where a sheet speaks of it. */
  private static Mapping at(Mapping step, Mark mark, Mark id) {
    if (!(step.value(step.first()) instanceof Scalar said)) {
      return step;
    }
    Entry first = new Entry(mark, Scalar.at(id, said.text()));
    return new Mapping(step.with(step.first(), first).entries(), mark);
  }

  /** The ids that a step gives to those of a block of its own. */
  private static List<String> within(Node step) {
    return step instanceof Mapping form && StepIds.isForm(form)
        ? form.entries().values().stream()
            .map(Entry::value)
            .filter(said -> said instanceof Mapping one && one.entries().containsKey(Keys.ID))
            .map(StepIds::id)
            .filter(id -> !id.isEmpty())
            .toList()
        : List.of();
  }

  private boolean isUse() {
    return entry.first().equals(Keys.USE);
  }

  private String own() {
    return StepIds.id(entry);
  }

  /** What the block says of an entry with such a value. */
  private Mapping defaults() {
    Mapping none = Mapping.at(entry.mark());
    if (!(block.value("defaults") instanceof Mapping table)) {
      return none;
    }
    String value = entry.text(entry.first());
    if (!table.entries().containsKey(value)) {
      List<String> known = List.copyOf(table.entries().keySet());
      String wrong = Quote.of(value) + " is nothing to " + entry.first();
      faults.value(entry.mark(), wrong, Quote.allowed(value, known));
    }
    return table.value(value) instanceof Mapping row ? row : none;
  }

  /** A value that is filled in; keys with values are said of a step. */
  private @Nullable Node value(String name, Mapping... said) {
    for (Mapping one : said) {
      Node value = one.value(name);
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

  private void unknown(String key, Entry value, List<String> known) {
    faults.add(
        Slip.UNKNOWN_KEY,
        value.key(),
        "the block has no step " + Quote.of(key) + ", and asks for no such value",
        Quote.allowed(key, known));
  }

  /** Where each result of the block leads, by the id that it has now. */
  private Map<String, Scalar> results(List<Node> steps, Map<String, String> names, String end) {
    List<String> known = steps.stream().filter(BlockCall::isResult).map(StepIds::id).toList();
    Map<String, Scalar> results = new LinkedHashMap<>();
    known.forEach(id -> results.put(names.getOrDefault(id, id), Scalar.at(entry.mark(), end)));
    List<Node> then =
        isUse() && entry.value(Keys.THEN) instanceof Sequence list ? list.items() : List.of();
    for (Node item : then) {
      if (item instanceof Mapping one && one.value(one.first()) instanceof Scalar target) {
        String id = one.first();
        if (!known.contains(id)) {
          faults.add(
              Slip.UNKNOWN_ID,
              one.mark(),
              "the block has no result " + Quote.of(id),
              Quote.allowed(id, known));
        } else if (!goesOn(target)) {
          results.put(names.getOrDefault(id, id), target);
        }
      }
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
