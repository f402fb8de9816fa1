package quarterturn.procedure.read.form;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Slip;
import quarterturn.procedure.condition.Quote;
import quarterturn.procedure.read.yaml.Faults;
import quarterturn.procedure.read.yaml.Node;
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
    Mapping said = defaults().over(entry.without(Keys.THEN));
    Template own = new Template(name -> value(name, said));
    Mapping fallback = block.mapping(Keys.OTHERWISE).each((key, value) -> own.fill(value));
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
      if (said.value(key) instanceof Mapping given && steps.get(i) instanceof Mapping step) {
        named = StepIds.id(given);
        steps.set(i, step.over(given.without(Keys.ID)));
      }
      boolean same = id.isEmpty() || (id.equals(own()) && !isUse());
      names.put(id, !named.isEmpty() ? named : same ? id : ids.free(id));
    }
    Mapping more = open.without(Keys.ID);
    Map<String, Scalar> results = results(names, end);
    if (isUse()) {
      more.entries().forEach((key, value) -> unknown(key, value, names.keySet()));
    } else {
      steps.replaceAll(step -> StepIds.id(step).equals(own()) ? ((Mapping) step).over(more) : step);
    }
    return Renaming.of(names, steps).stream().map(step -> result(step, results)).toList();
  }

  private boolean isUse() {
    return entry.first().equals(Keys.USE);
  }

  private String own() {
    return StepIds.id(entry);
  }

  /** What the block says of an entry with such a value. */
  private Mapping defaults() {
    Mapping table = block.mapping("defaults");
    String value = entry.text(entry.first());
    if (!isUse() && !table.entries().containsKey(value)) {
      List<String> known = List.copyOf(table.entries().keySet());
      String wrong = Quote.of(value) + " is nothing to " + entry.first();
      faults.value(entry.mark(), wrong, Quote.allowed(value, known));
    }
    return table.mapping(value);
  }

  /** A value that is filled in; keys with values are said of a step. */
  private @Nullable Node value(String name, Mapping... said) {
    for (Mapping one : said) {
      Node value = one.value(name);
      if (value != null && !(value instanceof Mapping)) {
        return value;
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
        || (value != null && !(value instanceof Mapping)) == wanted;
  }

  private void unknown(String key, Node.Entry value, Set<String> known) {
    faults.add(
        Slip.UNKNOWN_KEY,
        value.key(),
        "the block has no step " + Quote.of(key) + ", and asks for no such value",
        Quote.allowed(key, List.copyOf(known)));
  }

  /** Where each result of the block leads, by the id that it has now. */
  private Map<String, Scalar> results(Map<String, String> names, String end) {
    Map<String, Scalar> results = new LinkedHashMap<>();
    names.values().forEach(id -> results.put(id, Scalar.at(entry.mark(), end)));
    for (Node item : isUse() ? entry.items(Keys.THEN) : List.<Node>of()) {
      if (item instanceof Mapping one && one.value(one.first()) instanceof Scalar target) {
        String named = names.get(one.first());
        if (named == null) {
          faults.add(
              Slip.UNKNOWN_ID,
              one.mark(),
              "the block has no result " + Quote.of(one.first()),
              Quote.allowed(one.first(), List.copyOf(names.keySet())));
        } else if (!target.text().equals(Keys.GO_ON)) {
          results.put(named, target);
        }
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
