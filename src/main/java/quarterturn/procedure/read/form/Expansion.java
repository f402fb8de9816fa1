package quarterturn.procedure.read.form;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
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
import quarterturn.procedure.read.yaml.Scalars;

/** Puts in the place of each form of a sheet the steps that it stands for. */
final class Expansion {
  /** Blocks within blocks; more is a block that uses itself. */
  private static final int DEEPEST = 8;

  /** Steps and places in a sheet to which a block is still added. */
  private static final int MOST = 10_000;

  private final SharedFiles files;
  private final Faults faults;
  private final StepIds ids = new StepIds();
  private final List<Node> written = new ArrayList<>();

  /** The conditions that stand before steps, by the step's id. */
  private final Map<String, String> gates = new HashMap<>();

  /** The blocks that are being put in, the outermost first. */
  private final List<String> within = new ArrayList<>();

  private int places;
  private int partBegins;

  /** Whether the sheet itself has asked if the rod may be turned; it is asked once for all then. */
  private boolean mayTurn;

  /** Whether that was put at the beginning of this part. */
  private boolean partAsked;

  /** The part whose condition has to be looked at before its first step. */
  private @Nullable Mapping part;

  /** The name of the place behind the part. */
  private String partEnds = "";

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
    retune = again;
    for (Node entry : named) {
      String id = StepIds.id(entry);
      retune = retune == null && !id.isEmpty() ? Scalar.at(entry.mark(), id) : retune;
    }
    walk(named);
    endPart();
    endings();
    written.replaceAll(
        step -> step instanceof Mapping one ? Targets.replace(one, this::gated) : step);
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
        endPart();
        written.add(InOrder.label(step.mark(), step.text(Keys.PART), null));
        written.add(step.without(Keys.ONLY_IF).without(Keys.UNLESS));
        partBegins = written.size();
        partAsked = false;
        part = step;
      } else {
        if (part != null && gate(StepIds.id(step), part, partEnds)) {
          partBegins = written.size();
        } else {
          partEnds = part == null ? partEnds : "";
        }
        part = null;
        String end = place("end of " + StepIds.id(step));
        boolean gated = gate(StepIds.id(step), step, end);
        entry(step.without(Keys.ONLY_IF).without(Keys.UNLESS));
        if (gated) {
          written.add(InOrder.label(step.mark(), end, null));
        }
      }
    }
  }

  private void endPart() {
    if (!partEnds.isEmpty()) {
      written.add(InOrder.label(new Mark("", 1, 1), partEnds, null));
    }
    partEnds = place("end of part");
  }

  /** Looks at the condition of a part or a step before a step; false where it has none. */
  private boolean gate(String id, Mapping conditional, String end) {
    boolean unless = conditional.entries().containsKey(Keys.UNLESS);
    Entry when = conditional.entries().get(unless ? Keys.UNLESS : Keys.ONLY_IF);
    if (when == null) {
      return false;
    }
    if (unless && conditional.entries().containsKey(Keys.ONLY_IF)) {
      faults.value(when.key(), "both only if and unless", "Say it in one of them, with and");
    }
    Mark mark = when.key();
    Scalar past = Scalar.at(mark, end);
    Scalar on = Scalar.at(mark, Keys.GO_ON);
    Mapping yes = Mapping.at(mark).with("when", when.value()).with(Keys.GO, unless ? past : on);
    Mapping no = Mapping.at(mark).with(Keys.OTHERWISE, unless ? on : past);
    String gate = ids.free(StepIds.after(id, unless ? "-unless" : "-only-if"));
    gates.putIfAbsent(id, gate);
    written.add(
        Mapping.at(mark)
            .with("compute", Scalar.at(mark, gate))
            .with(Keys.BRANCHES, new Sequence(List.of(yes, no), mark)));
    return true;
  }

  private String place(String of) {
    return of + " " + ++places;
  }

  private void entry(Mapping step) {
    boolean named = StepIds.isForm(step) || step.first().equals(Keys.CASES);
    if (named && StepIds.id(step).isEmpty()) {
      new Scalars(faults).id(step.value(Keys.ID), "a step");
      return;
    }
    if (StepIds.isForm(step)) {
      form(step);
      return;
    }
    if (step.first().equals(Keys.CASES)) {
      written.addAll(Shorthand.cases(step, ids));
      return;
    }
    // A call returns by its own branches, so that nothing stands between it and an end.
    Node then = step.value(Keys.THEN);
    Mapping alone = step.without(Keys.THEN);
    if (then != null && step.first().equals("call")) {
      written.add(Shorthand.step(alone.with(Keys.BRANCHES, then)));
    } else {
      written.add(Shorthand.step(alone));
      then(step);
    }
  }

  /** The cases that belong to a step, behind it. */
  private void then(Mapping step) {
    Entry cases = step.entries().get(Keys.THEN);
    if (cases != null) {
      String id = ids.free(StepIds.after(StepIds.id(step), "-then"));
      Mapping after = Mapping.at(cases.key()).with(Keys.CASES, cases.value());
      written.addAll(Shorthand.cases(after.with(Keys.ID, Scalar.at(cases.key(), id)), ids));
    }
  }

  private void form(Mapping form) {
    Node first = form.value(form.first());
    boolean use = form.first().equals(Keys.USE);
    String word = form.text(form.first());
    String name = use ? word : Keys.FORMS.getOrDefault(form.first(), "");
    Mapping block = files.block(name);
    Mark at = first == null ? form.mark() : first.mark();
    if (block == null) {
      String wrong = "there is no block " + Quote.of(name);
      faults.add(Slip.UNKNOWN_ID, at, wrong, "Write the name of a file in procedures/blocks");
      return;
    }
    if (within.size() >= DEEPEST || Collections.frequency(within, name) > 1) {
      faults.add(Slip.UNKNOWN_ID, at, "blocks that use each other", "Take one of them out");
      return;
    }
    if (written.size() > MOST) {
      faults.value(at, "more than " + MOST + " steps stand before this block", "Write fewer");
      return;
    }
    before(form, use ? null : block.mapping("before").value(word));
    mayTurn |= name.equals(Keys.MAY_TURN);
    if (use && !gates.containsKey(StepIds.id(form))) {
      written.add(InOrder.label(form.mark(), StepIds.id(form), null));
    }
    String end = place("end of " + name);
    String outer = partEnds;
    partEnds = "";
    within.add(name);
    int from = written.size();
    walk(new BlockCall(form, block, this::limit, faults).steps(ids, end));
    if (!use) {
      written.subList(from, written.size()).replaceAll(step -> placed(step, form.mark()));
    }
    within.remove(within.size() - 1);
    endPart();
    partEnds = outer;
    written.add(InOrder.label(form.mark(), end, null));
    if (!use) {
      then(form);
    }
  }

  /** A piece of a form that is no block: what stands in the block's file stands at the form. */
  private static Node placed(Node piece, Mark place) {
    boolean here = piece.mark().file().equals(place.file());
    if (piece instanceof Scalar scalar) {
      return here ? scalar : new Scalar(scalar.text(), "", place);
    }
    if (piece instanceof Sequence list) {
      return new Sequence(
          list.each(item -> placed(item, place)).items(), here ? list.mark() : place);
    }
    if (piece instanceof Mapping mapping) {
      Map<String, Entry> all = new LinkedHashMap<>();
      mapping
          .entries()
          .forEach(
              (key, entry) -> {
                boolean own = entry.key().file().equals(place.file());
                all.put(key, new Entry(own ? entry.key() : place, placed(entry.value(), place)));
              });
      return new Mapping(all, here ? mapping.mark() : place);
    }
    return piece;
  }

  /** A limit, or the step at which the strings are tuned again after a break. */
  private @Nullable Node limit(String name) {
    return name.equals(Keys.RETUNE) ? retune : files.limit(name);
  }

  /** What has to stand before a form in its part, where the sheet has not said it yet. */
  private void before(Mapping form, @Nullable Node block) {
    if (!mayTurn && !partAsked && block != null) {
      List<Node> behind = new ArrayList<>(written.subList(partBegins, written.size()));
      written.subList(partBegins, written.size()).clear();
      walk(ids.of(List.of(Mapping.at(form.mark()).with(Keys.USE, block))));
      written.addAll(behind);
      mayTurn = false;
      partAsked = true;
    }
  }

  /** The ends that are named and do not stand in the sheet. */
  private void endings() {
    Set<String> named = new HashSet<>();
    Set<String> there = new HashSet<>();
    for (int from = 0; from < written.size(); ) {
      for (Node step : written.subList(from, written.size())) {
        there.add(StepIds.id(step));
        if (step instanceof Mapping one) {
          Targets.replace(
              one,
              to -> {
                named.add(to.text());
                return to;
              });
        }
      }
      from = written.size();
      named.removeAll(there);
      for (Node ending : named.isEmpty() ? List.<Node>of() : files.endings()) {
        if (named.contains(StepIds.id(ending))) {
          Node filled = new Template(this::limit).fill(ending);
          walk(filled == null ? List.of() : List.of(filled));
        }
      }
    }
  }
}
