package quarterturn.rehearsal;

import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Condition;

/** How a neck would have to be for a condition to hold. */
enum Temper {
  SOUND,
  DEAD,
  REVERSED,
  TOUCHING,
  FAR,
  TWISTED;

  /** The one that a condition asks for, or null where it asks for none. */
  static @Nullable Temper of(Condition when) {
    if (when instanceof Condition.Answered answered) {
      return switch (answered.response()) {
        case NOT_TURNED, MOVED -> SOUND;
        case NO_ANSWER -> DEAD;
        case WRONG_WAY -> REVERSED;
        case UNSEEN -> TOUCHING;
      };
    } else if (when instanceof Condition.Seems seems) {
      return switch (seems.doubt()) {
        case DEAD, FULLY_LOOSE -> DEAD;
        case REVERSED -> REVERSED;
      };
    } else if (when instanceof Condition.Turned) {
      return FAR;
    }
    return when instanceof Condition.Differs ? TWISTED : null;
  }
}
