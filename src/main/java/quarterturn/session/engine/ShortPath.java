package quarterturn.session.engine;

import java.time.Instant;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Shortcut;
import quarterturn.procedure.Step;
import quarterturn.procedure.condition.ConditionWords;
import quarterturn.procedure.condition.Role;

/**
 * Decides which steps a technician can skip. Whatever a procedure says, no step is skipped that is
 * marked never-skip, changes or establishes something, or warns of a hazard, and no wait after
 * something was done to the instrument.
 */
record ShortPath(Walk walk) {
  /** Whether the present procedure uses the short path. */
  static boolean taken(State state) {
    return state.started().role() == Role.TECHNICIAN
        && !state.position().nowhere()
        && !state.place().procedure().equals(state.position().stepwise());
  }

  /** Why the present step is skipped, or null where it is not. */
  @Nullable String skipped(State state, Step step, Instant now) {
    Shortcut shortcut = step.words().shortcut();
    if (shortcut == null || shortcut.way() != Shortcut.Way.SKIP) {
      return null;
    }
    if (!taken(state) || !idle(state, step) || !holds(state, shortcut, now)) {
      return null;
    }
    return shortcut.when() == null ? "short path" : ConditionWords.of(shortcut.when());
  }

  private static boolean idle(State state, Step step) {
    if (step.words().neverSkip() || !step.words().hazards().isEmpty()) {
      return false;
    }
    if (step instanceof Step.Tell tell) {
      return tell.establishes().isEmpty() && tell.changes() == null;
    }
    boolean began = state.pending().waiting() != null;
    return step instanceof Step.Wait wait
        && !wait.rest()
        && !began
        && state.history().changes().isEmpty();
  }

  /** Whether the present step is merged with what comes next. */
  boolean merges(State state, Step step, Instant now) {
    Shortcut shortcut = step.words().shortcut();
    return shortcut != null
        && shortcut.way() == Shortcut.Way.MERGE
        && step instanceof Step.Tell tell
        && tell.changes() == null
        && !step.words().neverSkip()
        && taken(state)
        && holds(state, shortcut, now);
  }

  private boolean holds(State state, Shortcut shortcut, Instant now) {
    return shortcut.when() == null || walk.holds(state, shortcut.when(), now);
  }
}
