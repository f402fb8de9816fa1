package quarterturn.lesson;

import org.jspecify.annotations.Nullable;
import quarterturn.unit.Bracket;
import quarterturn.unit.Turn;

/**
 * What a student expects before a reading or a turn.
 *
 * @param direction of a turn, the way; null of a reading, unless an earlier version asked for it
 * @param size the reading itself in its unit; of a turn 0, unless an earlier version asked how much
 * @param reason null where none was given
 * @param helped whether the student asked for help with it
 */
public record Prediction(
    @Nullable Direction direction, double size, @Nullable String reason, boolean helped) {
  /** How far a predicted turn may be off and still be right, in turns. */
  private static final double NEAR_TURN = 1 / 16.0 + 1e-9;

  private static final double SLACK = 1e-6;

  public Prediction {
    if (!Double.isFinite(size) || size < 0) {
      throw new IllegalArgumentException("a size must be a number, and not below zero");
    }
    if (reason != null && reason.isBlank()) {
      throw new IllegalArgumentException("a reason has a few words");
    }
  }

  /**
   * How this prediction came out.
   *
   * @param before the reading before, or null where there was none: then the size alone counts
   * @param step the gauge's step; one step beside the reading is still right
   */
  public Levels.Try against(@Nullable Value before, Value result, double step) {
    if (result instanceof Value.None) {
      return Levels.Try.UNTOLD;
    }
    boolean right = way(before, result) && size(result, step);
    return !right ? Levels.Try.WRONG : helped ? Levels.Try.RIGHT_WITH_HELP : Levels.Try.RIGHT;
  }

  /** Whether the size is right: one step beside the reading still is. */
  public boolean size(Value result, double step) {
    if (result instanceof Value.Gap gap) {
      Bracket b = gap.bracket();
      return size >= b.lowMm() - step - SLACK && size <= b.highMm() + step + SLACK;
    }
    if (result instanceof Value.Number number) {
      return Math.abs(size - Math.abs(number.value())) <= step + SLACK;
    }
    Turn turn = ((Value.Rod) result).turn().size();
    return size == 0 || Math.abs(size - turn.turns()) <= NEAR_TURN;
  }

  /** Whether the way is right; any is where nothing was read before, or no way was asked for. */
  public boolean way(@Nullable Value before, Value result) {
    if (direction == null) {
      return true;
    }
    if (result instanceof Value.Rod rod) {
      return direction == sign(rod.turn().turns());
    }
    if (before instanceof Value.Gap a && result instanceof Value.Gap b) {
      return possible(direction, a.bracket(), b.bracket());
    }
    if (before instanceof Value.Number a && result instanceof Value.Number b) {
      return direction == sign(b.value() - a.value());
    }
    return true;
  }

  /**
   * Whether a direction is possible between two readings: brackets that overlap may be the same gap
   * or lean one way.
   */
  private static boolean possible(Direction direction, Bracket before, Bracket after) {
    boolean overlap =
        after.lowMm() < before.highMm() - SLACK && after.highMm() > before.lowMm() + SLACK;
    Direction lean = sign(after.middleMm() - before.middleMm());
    return direction == lean || (overlap && direction == Direction.SAME);
  }

  private static Direction sign(double difference) {
    return difference > SLACK
        ? Direction.MORE
        : difference < -SLACK ? Direction.LESS : Direction.SAME;
  }
}
