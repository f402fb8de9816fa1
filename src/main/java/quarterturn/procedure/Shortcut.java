package quarterturn.procedure;

import org.jspecify.annotations.Nullable;
import quarterturn.procedure.condition.Condition;
import quarterturn.unit.Worded;

/**
 * What becomes of a step on a technician's short path, or on everybody's where what it gives still
 * holds. A step that does, warns of or guards something is never skipped.
 *
 * @param when what must hold for it, or null where it is always so
 */
public record Shortcut(Way way, @Nullable Condition when) {
  /** Whether a step is passed over where what it gives still holds. */
  public static boolean once(Step step) {
    Shortcut shortcut = step.words().shortcut();
    return shortcut != null && shortcut.way() == Way.ONCE;
  }

  /** What becomes of a step on the short path. */
  public enum Way implements Worded {
    /** The step is passed over, and that goes on record. */
    SKIP,
    /** The step is shown together with what is asked next, and confirmed by the answer to that. */
    MERGE,
    /** The step is passed over by everybody, where what it gives still holds. */
    ONCE
  }
}
