package quarterturn.rehearsal.cover;

import java.util.List;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Way;
import quarterturn.procedure.condition.Condition;
import quarterturn.session.Place;

/**
 * A piece of road from step to step.
 *
 * @param way the way that is taken with it, or null where a procedure is begun, or a break is taken
 * @param when its condition, or null
 * @param unless the conditions of the branches before it, which must not hold
 */
record Road(
    Place from, Place to, @Nullable Way way, @Nullable Condition when, List<Condition> unless) {
  Road {
    unless = List.copyOf(unless);
  }

  Road(Place from, Place to) {
    this(from, to, null, null, List.of());
  }

  /** Whether it leads on only over a break, after which the strings are tuned again. */
  boolean breaks() {
    return way == null && from.procedure().equals(to.procedure());
  }
}
