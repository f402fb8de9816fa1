package quarterturn.lesson.student;

import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import quarterturn.lesson.Direction;
import quarterturn.lesson.Prediction;
import quarterturn.procedure.kind.Quantity;
import quarterturn.session.Bench;
import quarterturn.unit.Length;
import quarterturn.unit.NotUnderstoodException;
import quarterturn.unit.Printable;

/**
 * Reads a prediction: the way of a turn, or what will be read. Words after it are a reason.
 *
 * @param quantity what is to be read, or null for the way of a turn
 * @param plausible what readings can plausibly be
 */
record Expecting(@Nullable Quantity quantity, Map<Quantity, Bench.Plausible> plausible) {
  private static final int LONGEST_REASON = 300;

  /** A way or a number with its unit, and after it the reason. */
  private static final Pattern SAID =
      Pattern.compile(
          "(no turn|\\S+?(?:\\s*(?:mm|inch|inches|in|thou|cents?|%|c)\\b)?)"
              + "(?:[,;:]?\\s+(?:because |since )?(.*))?",
          Pattern.CASE_INSENSITIVE);

  /** What is asked, with the unit of the answer. */
  String asks() {
    return quantity == null ? "Tighten, loosen or no turn" : what() + " in " + quantity.unit();
  }

  private String what() {
    return quantity == Quantity.RELIEF ? "The gap" : "The reading";
  }

  /** The unit of a number typed without one, or nothing where a way is asked. */
  String unit() {
    return quantity == null ? "" : quantity.unit();
  }

  /** An answer as it may be typed. */
  String example() {
    return quantity == null
        ? "tighten"
        : switch (quantity) {
          case RELIEF -> "0.35";
          case BOW_NUT_END, BOW_MIDDLE, BOW_JOINT, BOW_BODY_END, NUT_CLEARANCE -> "0.10";
          case ACTION -> "2.25";
          case INTONATION -> "3";
          case PICKUP_GAP -> "2.5";
          case HUMIDITY -> "48";
          case TEMPERATURE -> "21";
        };
  }

  /** Whether a text is a prediction of what is asked, be it plausible or not. */
  boolean fits(String typed) {
    try {
      new Expecting(quantity, Map.of()).made(typed, false);
      return true;
    } catch (NotUnderstoodException e) {
      return false;
    }
  }

  /**
   * The prediction that a text makes.
   *
   * @throws NotUnderstoodException saying what is asked, where it is of another kind
   */
  Prediction made(String typed, boolean helped) {
    Matcher said = SAID.matcher(typed.strip());
    if (!said.matches()) {
      throw no(typed);
    }
    String first = said.group(1).replaceAll("[,;:.]+$", "");
    String reason = said.group(2) == null || said.group(2).isBlank() ? null : said.group(2).strip();
    if (reason != null && reason.matches("[\\d.,].*")) {
      // Two numbers are no number with its reason.
      throw no(typed);
    }
    if (reason != null && reason.length() > LONGEST_REASON) {
      throw new NotUnderstoodException("A reason has at most " + LONGEST_REASON + " characters.");
    }
    return quantity == null
        ? new Prediction(way(first), 0, reason, helped)
        : new Prediction(null, plausibly(quantity, first), reason, helped);
  }

  private Direction way(String typed) {
    String word = typed.toLowerCase(Locale.ROOT);
    for (Direction way : Direction.values()) {
      if (!word.isEmpty() && way.words(true).startsWith(word)) {
        return way;
      }
    }
    throw no(typed);
  }

  private double size(Quantity of, String typed) {
    if (typed.matches("\\d+/\\d+")) {
      // That is a part of a turn.
      throw no(typed);
    }
    try {
      return typed.equalsIgnoreCase("touches") && of.bracket()
          ? 0
          : of.bracket() ? Length.parse(typed).mm() : of.value(typed);
    } catch (NotUnderstoodException e) {
      throw no(typed);
    }
  }

  /** The size that was said, where a reading can plausibly be so. */
  private double plausibly(Quantity of, String typed) {
    double said = size(of, typed);
    Bench.Plausible range = plausible.get(of);
    if (range != null && !range.holds(said)) {
      throw new NotUnderstoodException("\"" + Printable.of(typed) + "\" " + range.lies(of));
    }
    return Math.abs(said);
  }

  private NotUnderstoodException no(String typed) {
    String safe = Printable.of(typed.strip());
    String shown = safe.length() > 40 ? safe.substring(0, 37) + "..." : safe;
    return new NotUnderstoodException(
        "\"" + shown + "\" is no answer here. " + asks() + ", for example " + example() + ".");
  }
}
