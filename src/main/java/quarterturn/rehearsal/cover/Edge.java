package quarterturn.rehearsal.cover;

import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Way;
import quarterturn.procedure.condition.Condition;
import quarterturn.session.Place;

/**
 * An edge of a flow graph, from one step to another.
 *
 * @param way the way that is taken, or null where a procedure is begun or a break is taken
 * @param when the way's condition, or null
 * @param unless the conditions of the branches before it, which must fail
 * @param asks whether one of these conditions is about what was chosen, turned or reached before
 */
record Edge(
    Place from,
    Place to,
    @Nullable Way way,
    @Nullable Condition when,
    List<Condition> unless,
    boolean asks) {
  Edge {
    unless = List.copyOf(unless);
  }

  Edge(Place from, Place to, Way way, @Nullable Condition when, List<Condition> unless) {
    this(
        from,
        to,
        way,
        when,
        unless,
        Stream.concat(Stream.ofNullable(when), unless.stream())
            .flatMap(Condition::atoms)
            .anyMatch(PathState::asks));
  }

  Edge(Place from, Place to) {
    this(from, to, null, null, List.of(), false);
  }

  /** The same edge between places that equal its own. */
  Edge between(Place same, Place next) {
    return new Edge(same, next, way, when, unless, asks);
  }

  /** Whether the edge is a break, after which the strings are tuned again. */
  boolean breaks() {
    return way == null && from.procedure().equals(to.procedure());
  }
}
