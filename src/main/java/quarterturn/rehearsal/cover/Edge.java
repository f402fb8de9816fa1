package quarterturn.rehearsal.cover;

import java.util.List;
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
 */
record Edge(
    Place from, Place to, @Nullable Way way, @Nullable Condition when, List<Condition> unless) {
  Edge {
    unless = List.copyOf(unless);
  }

  Edge(Place from, Place to) {
    this(from, to, null, null, List.of());
  }

  /** Whether the edge is a break, after which the strings are tuned again. */
  boolean breaks() {
    return way == null && from.procedure().equals(to.procedure());
  }
}
