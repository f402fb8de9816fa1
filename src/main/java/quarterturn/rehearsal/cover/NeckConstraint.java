package quarterturn.rehearsal.cover;

import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Condition;

/** How a neck would have to be for a condition to hold. */
enum NeckConstraint {
  SOUND,
  DEAD,
  REVERSED,
  TOUCHING,
  FAR,
  TWISTED;

  /** The one that a condition asks for, or null where it asks for none. */
  static @Nullable NeckConstraint of(Condition when) {
    return when instanceof Condition.Atom atom ? atom.match(ASKED) : null;
  }

  private static final Condition.Atom.Cases<@Nullable NeckConstraint> ASKED =
      new Condition.Atom.Cases<>(
          against -> null,
          leans -> null,
          below -> null,
          atLeast -> null,
          differs -> TWISTED,
          repeats -> null,
          chosen -> null,
          is -> null,
          turned -> FAR,
          answered ->
              switch (answered.response()) {
                case NOT_TURNED, MOVED -> SOUND;
                case NO_ANSWER -> DEAD;
                case WRONG_WAY -> REVERSED;
                case UNSEEN -> TOUCHING;
              },
          strings -> null,
          called -> null,
          seems ->
              switch (seems.doubt()) {
                case DEAD, FULLY_LOOSE -> DEAD;
                case REVERSED -> REVERSED;
              },
          reached -> null,
          felt -> null);
}
