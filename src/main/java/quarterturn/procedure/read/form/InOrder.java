package quarterturn.procedure.read.form;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Mark;
import quarterturn.procedure.read.yaml.Node;
import quarterturn.procedure.read.yaml.Node.Entry;
import quarterturn.procedure.read.yaml.Node.Mapping;
import quarterturn.procedure.read.yaml.Node.Scalar;
import quarterturn.procedure.read.yaml.Node.Sequence;

/**
 * Writes out the way on where a sheet leaves it out: the step that stands next. A step, an option
 * and a branch each go on to it unless they say otherwise. What is added stands at the place of
 * what it belongs to, so that a fault in it points at what was written.
 *
 * <p>Among the steps there may be labels, each a name for the place where it stands.
 */
final class InOrder {
  static final String LABEL = "label";

  private InOrder() {}

  /** A name for the place where it stands, or for the step {@code to} where that is not null. */
  static Mapping label(Mark mark, String name, @Nullable Scalar to) {
    Mapping label = new Mapping(Map.of(LABEL, new Entry(mark, Scalar.at(mark, name))), mark);
    return to == null ? label : label.with(Keys.GO, new Entry(mark, to));
  }

  /** The entries of a list of steps, parts among them, with every way on that has a next step. */
  static List<Node> of(List<Node> entries) {
    List<Node> written = new ArrayList<>();
    Map<String, Scalar> places = new HashMap<>();
    Scalar next = null;
    for (int i = entries.size() - 1; i >= 0; i--) {
      Node entry = entries.get(i);
      Scalar id = id(entry);
      if (id == null) {
        written.add(entry);
      } else if (((Mapping) entry).first().equals(LABEL)) {
        next = ((Mapping) entry).value(Keys.GO) instanceof Scalar to ? to : next;
        places.put(id.text(), next == null ? Scalar.at(id.mark(), Keys.GO_ON) : next);
      } else {
        written.add(next == null ? entry : onward((Mapping) entry, next));
        next = id;
      }
    }
    Collections.reverse(written);
    if (!places.isEmpty()) {
      written.replaceAll(
          entry ->
              id(entry) == null ? entry : Targets.replace((Mapping) entry, at -> at(at, places)));
    }
    return written;
  }

  /** Where a target leads that may be the name of a place. */
  private static Scalar at(Scalar target, Map<String, Scalar> places) {
    Set<String> seen = new HashSet<>();
    Scalar at = target;
    for (Scalar to = at; to != null && seen.add(to.text()); to = places.get(at.text())) {
      at = to;
    }
    return at.text().equals(target.text()) ? target : Scalar.at(target.mark(), at.text());
  }

  /** The id of the first step, or null where there is none. */
  static @Nullable Scalar first(List<Node> entries) {
    return entries.stream().map(InOrder::id).filter(Objects::nonNull).findFirst().orElse(null);
  }

  /** The id of a step, the value of its first key; null of a part and of what is no step. */
  static @Nullable Scalar id(Node entry) {
    if (!(entry instanceof Mapping step) || step.first().equals(Keys.PART)) {
      return null;
    }
    return step.value(step.first()) instanceof Scalar id && !id.text().isEmpty() ? id : null;
  }

  private static Mapping onward(Mapping step, Scalar next) {
    Mapping on =
        Targets.replace(
            step, to -> to.text().equals(Keys.GO_ON) ? Scalar.at(to.mark(), next.text()) : to);
    String kind = on.first();
    if (kind.equals("choose")) {
      return each(on, Keys.OPTIONS, "is", next);
    }
    if (on.entries().containsKey(Keys.BRANCHES)) {
      return each(on, Keys.BRANCHES, "when", next);
    }
    return Keys.ENDS.contains(kind) || kind.equals("turn") ? on : with(on, kind, next);
  }

  /** The step with a way on for each piece of a list that has a key, and none yet. */
  private static Mapping each(Mapping step, String list, String key, Scalar next) {
    return step.value(list) instanceof Sequence pieces
        ? step.with(
            list, pieces.each(piece -> piece instanceof Mapping one ? with(one, key, next) : piece))
        : step;
  }

  /** A piece with a way on, at the place of the key {@code at}, where it has none. */
  private static Mapping with(Mapping piece, String at, Scalar next) {
    Entry entry = piece.entries().get(at);
    return entry == null || piece.entries().containsKey(Keys.GO)
        ? piece
        : piece.with(Keys.GO, new Entry(entry.key(), Scalar.at(entry.key(), next.text())));
  }
}
