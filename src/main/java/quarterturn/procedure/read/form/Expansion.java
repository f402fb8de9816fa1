package quarterturn.procedure.read.form;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
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

/** Puts in the place of each form of a sheet the steps that it stands for. */
final class Expansion {
  /** Blocks within blocks; more is a block that uses itself. */
  private static final int DEEPEST = 8;

  private final SharedFiles files;
  private final Faults faults;
  private final StepIds ids = new StepIds();
  private final List<Node> written = new ArrayList<>();

  /** The conditions that stand before steps, by the step's id. */
  private final Map<String, String> gates = new HashMap<>();

  private int places;
  private int depth;
  private int partBegins;
  private boolean mayTurn;
  private @Nullable Entry condition;
  private boolean unless;
  private @Nullable String partEnds;
  private @Nullable Node retune;

  Expansion(SharedFiles files, Faults faults) {
    this.files = files;
    this.faults = faults;
  }

  /**
   * The steps of a sheet, parts and labels among them.
   *
   * @param again the step at which the strings are tuned again after a break; null for the first
   */
  List<Node> of(List<Node> entries, @Nullable Node again) {
    List<Node> named = ids.of(entries);
    retune =
        again == null
            ? named.stream()
                .filter(one -> !StepIds.id(one).isEmpty())
                .findFirst()
                .map(one -> (Node) Scalar.at(one.mark(), StepIds.id(one)))
                .orElse(null)
            : again;
    walk(named);
    endPart();
    endings();
    written.replaceAll(
        step ->
            step instanceof Mapping one && !gates.isEmpty()
                ? Targets.replace(one, this::gated)
                : step);
    return written;
  }

  private Scalar gated(Scalar target) {
    String gate = gates.get(target.text());
    return gate == null ? target : Scalar.at(target.mark(), gate);
  }

  private void walk(List<Node> entries) {
    for (Node entry : entries) {
      if (!(entry instanceof Mapping step)) {
        written.add(entry);
      } else if (step.first().equals(Keys.PART)) {
        part(step);
      } else {
        String end = condition(step) == null ? null : place("end of " + StepIds.id(step));
        begin(step, end);
        entry(step.without(Keys.ONLY_IF).without(Keys.UNLESS));
        if (end != null) {
          written.add(InOrder.label(step.mark(), end, null));
        }
      }
    }
  }

  private static @Nullable Entry condition(Mapping step) {
    Entry only = step.entries().get(Keys.ONLY_IF);
    return only == null ? step.entries().get(Keys.UNLESS) : only;
  }

  private void part(Mapping part) {
    endPart();
    written.add(part.without(Keys.ONLY_IF).without(Keys.UNLESS));
    Entry when = condition(part);
    if (when != null) {
      partEnds = place("end of part");
      condition = when;
      unless = part.entries().containsKey(Keys.UNLESS);
    }
    partBegins = written.size();
  }

  private void endPart() {
    if (partEnds != null) {
      written.add(InOrder.label(new Mark("", 1, 1), partEnds, null));
      partEnds = null;
      condition = null;
    }
  }

  /** A step before which its condition, or that of its part, is looked at. */
  private void begin(Mapping step, @Nullable String end) {
    String id = StepIds.id(step);
    if (condition != null && partEnds != null) {
      gate(id, condition, unless, partEnds);
      condition = null;
      partBegins = written.size();
    }
    Entry own = condition(step);
    if (own != null && end != null) {
      gate(id, own, step.entries().containsKey(Keys.UNLESS), end);
    }
  }

  private void gate(String id, Entry when, boolean unless, String end) {
    Mark mark = when.key();
    Mapping none = new Mapping(Map.of(), mark);
    Entry past = new Entry(mark, Scalar.at(mark, end));
    Entry on = new Entry(mark, Scalar.at(mark, Keys.GO_ON));
    Mapping yes = none.with("when", when).with(Keys.GO, unless ? past : on);
    Mapping no = none.with(Keys.OTHERWISE, unless ? on : past);
    String gate = ids.free(StepIds.after(id, unless ? "-unless" : "-only-if"));
    gates.putIfAbsent(id, gate);
    written.add(
        none.with("compute", new Entry(mark, Scalar.at(mark, gate)))
            .with(Keys.BRANCHES, new Entry(mark, new Sequence(List.of(yes, no), mark))));
  }

  private String place(String of) {
    return of + " " + ++places;
  }

  private void entry(Mapping step) {
    if (StepIds.isForm(step)) {
      form(step);
      return;
    }
    if (step.first().equals(Keys.CASES)) {
      written.addAll(Shorthand.cases(step, ids));
      return;
    }
    // A call returns by its own branches, so that nothing stands between it and an end.
    if (step.first().equals("call") && step.entries().get(Keys.THEN) != null) {
      Mapping call = step.with(Keys.BRANCHES, step.entries().get(Keys.THEN));
      written.add(Shorthand.step(call.without(Keys.THEN)));
      return;
    }
    written.add(Shorthand.step(step.without(Keys.THEN)));
    then(step);
  }

  /** The cases that belong to a step, behind it. */
  private void then(Mapping step) {
    Entry cases = step.entries().get(Keys.THEN);
    if (cases != null) {
      Mark mark = cases.key();
      String id = ids.free(StepIds.after(StepIds.id(step), "-then"));
      Mapping after = new Mapping(Map.of(Keys.CASES, cases), mark);
      Entry named = new Entry(mark, Scalar.at(mark, id));
      written.addAll(Shorthand.cases(after.with(Keys.ID, named), ids));
    }
  }

  private void form(Mapping form) {
    Node first = form.value(form.first());
    boolean use = form.first().equals(Keys.USE);
    String word = form.text(form.first());
    String name = use ? word : Keys.FORMS.getOrDefault(form.first(), "");
    Mapping block = files.block(name);
    if (block == null || depth >= DEEPEST) {
      faults.add(
          Slip.UNKNOWN_ID,
          first == null ? form.mark() : first.mark(),
          block == null ? "there is no block " + Quote.of(name) : "blocks that use each other",
          block == null ? "Write the name of a file in procedures/blocks" : "Take one of them out");
      return;
    }
    if (!use && block.value("before") instanceof Mapping table) {
      before(form, table.value(word));
    }
    mayTurn |= name.equals(Keys.MAY_TURN);
    if (use && !gates.containsKey(StepIds.id(form))) {
      written.add(InOrder.label(form.mark(), StepIds.id(form), null));
    }
    String end = place("end of " + name);
    int from = written.size();
    depth++;
    walk(new BlockCall(form, block, this::limit, faults).steps(ids, end));
    depth--;
    if (!use) {
      written.subList(from, written.size()).replaceAll(step -> placed(step, form.mark()));
    }
    written.add(InOrder.label(form.mark(), end, null));
    if (!use) {
      then(form);
    }
  }

  /** A step of a form that is no block: it stands where the form stands. */
  private static Node placed(Node step, Mark place) {
    Node id = step instanceof Mapping one ? one.value(one.first()) : null;
    return step instanceof Mapping one && id != null
        ? one.with(one.first(), new Entry(place, id))
        : step;
  }

  /** A limit, or the step at which the strings are tuned again after a break. */
  private @Nullable Node limit(String name) {
    return name.equals(Keys.RETUNE) ? retune : files.limit(name);
  }

  /** What has to stand before a form in its part, where the sheet has not said it yet. */
  private void before(Mapping form, @Nullable Node block) {
    if (!mayTurn && block != null) {
      List<Node> behind = new ArrayList<>(written.subList(partBegins, written.size()));
      written.subList(partBegins, written.size()).clear();
      Mapping use = new Mapping(Map.of(Keys.USE, new Entry(form.mark(), block)), form.mark());
      walk(ids.of(List.of(use)));
      written.addAll(behind);
    }
  }

  /** The ends that are named and do not stand in the sheet. */
  private void endings() {
    for (boolean more = true; more; ) {
      Set<String> named = new HashSet<>();
      Set<String> there = new HashSet<>();
      for (Node step : written) {
        Scalar id = InOrder.id(step);
        if (id != null) {
          there.add(id.text());
          Targets.replace(
              (Mapping) step,
              to -> {
                named.add(to.text());
                return to;
              });
        }
      }
      named.removeAll(there);
      int before = written.size();
      for (Node ending : named.isEmpty() ? List.<Node>of() : files.endings()) {
        if (named.contains(StepIds.id(ending))) {
          walk(List.of(ending));
        }
      }
      more = written.size() > before;
    }
  }
}
