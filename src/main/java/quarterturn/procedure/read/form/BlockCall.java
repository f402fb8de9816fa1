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
    Mapping said = table.mapping(value).over(entry.without(Keys.THEN));
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
    Set<String> asked = Template.names(block);
    Mapping open =
        said.without(entry.first())
            .without(Keys.ID)
            .each((key, one) -> asked.contains(key) ? null : one);
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
    Mapping more = open;
    Set<String> allowed = new LinkedHashSet<>(isUse() ? names.keySet() : asked);
    block.items("says").forEach(one -> allowed.add(one instanceof Scalar key ? key.text() : ""));
    more.entries().forEach((key, one) -> known(key, one, allowed));
    Map<String, Scalar> results = results(names, end);
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
                List<Node> both = new ArrayList<>(list.items());
                both.addAll(further.items());
                return new Sequence(both, own.mark());
              }
              return before instanceof Mapping ways && own instanceof Mapping others
                  ? others.each((way, to) -> added(way, ways.text(way), to))
                  : own;
            }));
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

  private void known(String key, Node.Entry value, Set<String> allowed) {
    if (!allowed.contains(key)) {
      faults.add(
          Slip.UNKNOWN_KEY,
          value.key(),
          entry.first() + " knows nothing of " + Quote.of(key),
          Quote.allowed(key, List.copyOf(allowed)));
    }
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
