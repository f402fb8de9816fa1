package quarterturn.lesson;

import java.util.Arrays;
import quarterturn.unit.NotUnderstoodException;
import quarterturn.unit.Worded;

/** How much of a worked example a student is shown. Hazards are shown at every level. */
public enum Level implements Worded {
  WORKED("full worked example", 0),
  LAST_MISSING("the last step is left to the student", 1),
  TWO_MISSING("the last two steps are left to the student", 2),
  OWN("the student's own", Integer.MAX_VALUE);

  private final String words;
  private final int missing;

  Level(String words, int missing) {
    this.words = words;
    this.missing = missing;
  }

  /**
   * Reads a level by its word.
   *
   * @throws NotUnderstoodException naming those there are
   */
  public static Level of(String typed) {
    return Arrays.stream(values())
        .filter(level -> level.word().equalsIgnoreCase(typed))
        .findFirst()
        .orElseThrow(
            () ->
                new NotUnderstoodException(
                    "choose a level: worked, last-missing, two-missing or own"));
  }

  /** The level in words for people. */
  public String words() {
    return words;
  }

  /** How many of {@code steps} steps of an example are shown. */
  public int shown(int steps) {
    return Math.max(0, steps - missing);
  }

  Level up() {
    return values()[Math.min(ordinal() + 1, values().length - 1)];
  }

  Level down() {
    return values()[Math.max(ordinal() - 1, 0)];
  }
}
