package quarterturn.rehearsal.cover;

import org.jspecify.annotations.Nullable;
import quarterturn.procedure.condition.Condition;
import quarterturn.procedure.condition.Doubt;

/** Properties of a simulated neck that make a condition hold. */
enum NeckConstraint {
  SOUND,
  DEAD,
  REVERSED,
  TOUCHING,
  FAR,
  TWISTED;

  /** The neck that makes a condition hold, or null where the condition is not about the neck. */
  static @Nullable NeckConstraint of(Condition when) {
    if (when instanceof Condition.Answered answered) {
      return switch (answered.response()) {
        case NOT_TURNED, MOVED -> SOUND;
        case NO_ANSWER -> DEAD;
        case WRONG_WAY -> REVERSED;
        case UNSEEN -> TOUCHING;
      };
    }
    if (when instanceof Condition.Seems seems) {
      return seems.doubt() == Doubt.REVERSED ? REVERSED : DEAD;
    }
    return when instanceof Condition.Turned
        ? FAR
        : when instanceof Condition.Differs ? TWISTED : null;
  }
}
