package quarterturn.lesson;

import org.jspecify.annotations.Nullable;

/**
 * The rule by which a student is helped less: after two right in a row without help, one step less
 * is shown.
 */
public final class Levels {
  /** How many predictions right in a row, without help, raise a level; one alone may be luck. */
  public static final int RIGHT_TO_RISE = 2;

  private Levels() {}

  /** How a prediction came out. */
  public enum Try {
    RIGHT,
    /** A prediction that was right with help: the level stays. */
    RIGHT_WITH_HELP,
    WRONG,
    /** A prediction whose result could not be read, so it was neither right nor wrong. */
    UNTOLD
  }

  /**
   * Where a student stands.
   *
   * @param right how many were right in a row, without help, since the level changed
   * @param frozen whether the teacher keeps the level as it is
   */
  public record Standing(Level level, int right, boolean frozen) {
    public static Standing at(Level level) {
      return new Standing(level, 0, false);
    }
  }

  /** The standing after one prediction. */
  public static Standing after(Standing before, Try how) {
    if (before.frozen() || how == Try.UNTOLD || how == Try.RIGHT_WITH_HELP) {
      return before;
    }
    if (how == Try.WRONG) {
      return Standing.at(before.level().down());
    }
    int right = before.right() + 1;
    return right < RIGHT_TO_RISE
        ? new Standing(before.level(), right, false)
        : Standing.at(before.level().up());
  }

  /**
   * The standing after the teacher's word.
   *
   * @param level null where it stays
   */
  public static Standing set(Standing before, @Nullable Level level, boolean frozen) {
    Level now = level == null ? before.level() : level;
    return new Standing(now, now == before.level() ? before.right() : 0, frozen);
  }
}
