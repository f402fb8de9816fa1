package quarterturn.procedure.condition;

import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * A set of values of a {@link Subject}. Numbers are intervals: a cell of a proof stands for all
 * values in it, and one value of a session is the smallest interval that holds it.
 */
public sealed interface Cell {
  /** The end of every interval that has none. */
  double WITHOUT_END = Double.POSITIVE_INFINITY;

  /** Slack by which intervals are compared. */
  double SLACK = 1e-9;

  /** Slack by which a reading or a calculated value is compared, in its unit. */
  double READING_SLACK = 1e-6;

  /**
   * How a reading stands to its window.
   *
   * @param lean where an undecided one leans, or null
   * @param near the side on which it is just outside, by {@link Verdict#near}, or null
   * @param from the least value
   * @param below all values are below this
   */
  record Standing(
      Verdict verdict, @Nullable Verdict lean, @Nullable Verdict near, double from, double below)
      implements Cell {
    /** The standing where nothing was read. */
    public static final Standing NOTHING =
        new Standing(Verdict.NOT_MEASURED, null, null, Double.NaN, Double.NaN);

    /** The standing of a single value. */
    public static Standing at(
        Verdict verdict, @Nullable Verdict lean, @Nullable Verdict near, double value) {
      double from = value + READING_SLACK;
      return new Standing(verdict, lean, near, from, from + 2 * SLACK);
    }

    boolean leans(Verdict towards) {
      return verdict == Verdict.UNDECIDED && lean == towards;
    }

    boolean isBelow(double limit) {
      return verdict != Verdict.NOT_MEASURED && below <= limit + SLACK;
    }

    boolean isAtLeast(double limit) {
      return verdict != Verdict.NOT_MEASURED && from >= limit - SLACK;
    }
  }

  /**
   * A number above {@code above}, up to and with {@code to}; below zero where the highest string
   * reads more than the lowest.
   */
  record Apart(double above, double to) implements Cell {
    /** The cell of a single number. */
    public static Apart by(double apart) {
      double nearer = apart - Math.signum(apart) * READING_SLACK;
      return new Apart(nearer, nearer);
    }

    boolean isMore(Condition.Differs.More more, double limit) {
      boolean lowest = above >= limit - SLACK;
      boolean highest = to <= SLACK - limit;
      return switch (more) {
        case LOWEST -> lowest;
        case HIGHEST -> highest;
        case EITHER -> lowest || highest;
      };
    }
  }

  /** The verdicts found among the strings. */
  record Strings(Set<Verdict> verdicts) implements Cell {}

  /** An option or an outcome; empty where none was chosen yet. */
  record Option(String id) implements Cell {}

  /** A number from {@code from}, below {@code below}. */
  record Amount(double from, double below) implements Cell {
    /** The cell of a single number. */
    public static Amount of(double number) {
      return new Amount(number, number + READING_SLACK);
    }

    boolean isAtLeast(double number) {
      return from >= number - SLACK;
    }
  }

  /** The neck's response, and an interval of how often it came. */
  record Answer(Response response, double from, double below) implements Cell {
    boolean is(Response wanted, int times) {
      return response == wanted && from >= times;
    }
  }

  /** Whether a reading may creep out of its window. */
  record Creep(boolean out) implements Cell {}

  record Person(Role role) implements Cell {}

  record Rod(@Nullable Doubt doubt) implements Cell {}

  record Felt(@Nullable Feel feel) implements Cell {}

  record Within(Set<String> callers) implements Cell {}
}
