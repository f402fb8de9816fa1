package quarterturn.rehearsal.cover;

import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.random.RandomGenerator;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Step;
import quarterturn.procedure.condition.Condition;
import quarterturn.procedure.condition.Role;
import quarterturn.procedure.condition.Subject;
import quarterturn.procedure.condition.Verdict;
import quarterturn.procedure.kind.Quantity;
import quarterturn.procedure.kind.Which;

/**
 * What a session needs to go down a path, from the path's conditions: who is at the bench, how the
 * neck answers, and what is read at each edge.
 */
final class PathConstraints {
  private final List<Edge> route;
  private final FlowGraph graph;
  private final RandomGenerator random;
  private final Map<Integer, Set<Verdict>> verdicts = new HashMap<>();
  private final Map<Integer, Double> values = new HashMap<>();
  private boolean lacking;
  private @Nullable Role role;
  private @Nullable NeckConstraint temper;

  /** The constraints of a path; those of a later edge go before those of an earlier one. */
  PathConstraints(List<Edge> route, FlowGraph graph, RandomGenerator random) {
    this.route = route;
    this.graph = graph;
    this.random = random;
    for (int i = route.size() - 1; i >= 0; i--) {
      Edge edge = route.get(i);
      boolean begins = edge.way() == null && !edge.breaks();
      lacking |= begins && !(graph.step(edge.from()) instanceof Step.Call);
      if (edge.when() != null) {
        wish(i, edge.when(), true);
      }
      for (Condition before : edge.unless()) {
        wish(i, before, false);
      }
      agree(i);
    }
  }

  private PathConstraints wish(int at, Condition when, boolean holds) {
    when.match(
        all -> parts(at, all.parts(), holds, holds),
        any -> parts(at, any.parts(), holds, !holds),
        not -> wish(at, not.part(), !holds),
        atom -> wish(at, atom, holds));
    ReadingConstraint stands = ReadingConstraint.of(when, holds);
    if (stands != null) {
      narrow(at, stands);
    }
    return this;
  }

  private PathConstraints wish(int at, Condition.Atom atom, boolean holds) {
    if (atom instanceof Condition.Is is) {
      Role other = is.role() == Role.BEGINNER ? Role.TECHNICIAN : Role.BEGINNER;
      role = role != null ? role : holds ? is.role() : other;
    }
    if (atom.about() instanceof Subject.Reading reading) {
      // A value is below a limit where it is less, and at least a limit where it is that.
      boolean below = atom instanceof Condition.Below == holds;
      double less = below ? step(reading.quantity()) : 0;
      atom.bounds().forEach(limit -> value(at, reading.quantity(), limit - less));
    }
    temper = temper == null && holds ? NeckConstraint.of(atom) : temper;
    return this;
  }

  /**
   * Adds the constraints of a compound condition's parts.
   *
   * @param all whether every part is to hold (or fail), or one is enough
   */
  private PathConstraints parts(int at, List<Condition> parts, boolean holds, boolean all) {
    if (all) {
      parts.forEach(part -> wish(at, part, holds));
      return this;
    }
    boolean readings = parts.stream().allMatch(part -> ReadingConstraint.of(part, holds) != null);
    boolean given =
        parts.stream().anyMatch(part -> temper != null && temper == NeckConstraint.of(part));
    if (!readings && !given) {
      wish(at, parts.get(random.nextInt(parts.size())), holds);
    }
    return this;
  }

  private static double step(Quantity quantity) {
    return quantity.unit().equals("mm") ? 0.05 : 1;
  }

  private void narrow(int at, ReadingConstraint stands) {
    int reading = reading(at, stands.quantity());
    Set<Verdict> now = verdicts.getOrDefault(reading, EnumSet.allOf(Verdict.class));
    Set<Verdict> both = EnumSet.copyOf(now);
    both.retainAll(stands.verdicts());
    if (reading >= 0 && (reading == at || !both.isEmpty())) {
      verdicts.put(reading, both.isEmpty() ? stands.verdicts() : both);
    }
  }

  private void value(int at, Quantity quantity, double value) {
    int reading = reading(at, quantity);
    if (reading >= 0) {
      values.put(reading, value);
    }
  }

  /** Index of the edge where the reading is taken that a later condition depends on, or -1. */
  private int reading(int at, Quantity quantity) {
    for (int i = at; i >= 0; i--) {
      boolean reads =
          graph.step(route.get(i).from()) instanceof Step.Measure measure
              && measure.quantity() == quantity
              && (i == at || measure.which() != Which.HIGHEST);
      if (reads) {
        return i;
      }
    }
    return -1;
  }

  /**
   * Gives a reading the same constraint as the next reading of its quantity, so that the two agree.
   */
  private void agree(int at) {
    if (!(graph.step(route.get(at).from()) instanceof Step.Measure measure)
        || measure.which() == Which.HIGHEST) {
      return;
    }
    for (int i = at + 1; i < route.size(); i++) {
      if (graph.step(route.get(i).from()) instanceof Step.Measure next
          && next.quantity() == measure.quantity()
          && next.which() != Which.HIGHEST) {
        Set<Verdict> both = EnumSet.allOf(Verdict.class);
        both.retainAll(verdicts.getOrDefault(at, both));
        both.retainAll(verdicts.getOrDefault(i, both));
        if (!both.isEmpty()) {
          verdicts.put(at, both);
        }
        return;
      }
    }
  }

  /** How the reading at an edge should stand to its window; empty where any will do. */
  Set<Verdict> verdicts(int edge) {
    Set<Verdict> some = verdicts.getOrDefault(edge, Set.of());
    return some.size() == Verdict.values().length ? Set.of() : some;
  }

  /** The value that should be read at an edge, or null. */
  @Nullable Double value(int edge) {
    return values.get(edge);
  }

  /** How the neck's relief should stand to its window at first; empty where any will do. */
  Set<Verdict> relief() {
    for (int i = 0; i < route.size(); i++) {
      if (graph.step(route.get(i).from()) instanceof Step.Measure measure
          && measure.quantity() == Quantity.RELIEF) {
        return verdicts(i);
      }
    }
    return Set.of();
  }

  /** Whether the session needs to begin without readings from earlier sessions. */
  boolean lacking() {
    return lacking;
  }

  @Nullable Role role() {
    return role;
  }

  @Nullable NeckConstraint temper() {
    return temper;
  }
}
