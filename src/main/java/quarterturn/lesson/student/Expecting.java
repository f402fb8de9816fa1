package quarterturn.lesson.student;

import java.util.Locale;
import org.jspecify.annotations.Nullable;
import quarterturn.lesson.Direction;
import quarterturn.lesson.Prediction;
import quarterturn.procedure.kind.Quantity;
import quarterturn.unit.Bracket;
import quarterturn.unit.BracketParser;
import quarterturn.unit.Length;
import quarterturn.unit.NotUnderstoodException;
import quarterturn.unit.Printable;
import quarterturn.unit.Turn;

/**
 * A prediction that is being made: which way, how much and why, in this order, in one or more
 * lines.
 *
 * @param quantity what is to be read, or null before a turn
 * @param asksWay whether there is something to compare with
 * @param direction null until it is said
 * @param size null until it is said
 * @param reason null until it is said
 */
public record Expecting(
    @Nullable Quantity quantity,
    boolean asksWay,
    @Nullable Direction direction,
    @Nullable Double size,
    @Nullable String reason,
    boolean helped) {
  private static final int LONGEST_REASON = 300;

  /** A prediction of which nothing is said yet. */
  public static Expecting of(@Nullable Quantity quantity, boolean asksWay) {
    return new Expecting(quantity, asksWay, null, null, null, false);
  }

  /** The parts of a prediction, in the order they are asked for. */
  public enum Part {
    WAY,
    SIZE,
    REASON
  }

  /** The next part to ask for, or null where all is said. */
  public @Nullable Part next() {
    if (asksWay && direction == null) {
      return Part.WAY;
    }
    if (size == null) {
      return Part.SIZE;
    }
    return reason == null ? Part.REASON : null;
  }

  private boolean turn() {
    return quantity == null;
  }

  /** This prediction, noted as made with help. */
  public Expecting withHelp() {
    return new Expecting(quantity, asksWay, direction, size, reason, true);
  }

  /**
   * This prediction with what a line adds to it.
   *
   * @throws NotUnderstoodException saying what is taken; nothing of the line is
   */
  public Expecting with(String line) {
    Expecting now = this;
    String left = line.strip();
    if (left.isEmpty()) {
      throw new NotUnderstoodException(wanted());
    }
    while (!left.isEmpty() && now.next() != null) {
      if (now.next() == Part.REASON) {
        return now.because(left);
      }
      String word = first(left, now.next() == Part.SIZE);
      String rest = left.substring(word.length()).strip();
      now = now.next() == Part.WAY ? now.going(word) : now.sized(word);
      left =
          now.next() == Part.REASON ? rest.replaceFirst("^(,|;|:|because |since )\\s*", "") : rest;
    }
    return now;
  }

  /** The first word of a line, with a unit that stands behind a number. */
  private static String first(String text, boolean size) {
    String[] words = text.split("\\s+", 3);
    boolean unit =
        size
            && words.length > 1
            && words[1]
                .toLowerCase(Locale.ROOT)
                .matches("(mm|in|inch|inches|thou|cents|%|c|deg|degrees|turn|turns)[,;:]?");
    int end =
        unit ? text.indexOf(words[1], words[0].length()) + words[1].length() : words[0].length();
    String word = text.substring(0, end);
    return word.matches(".*[;:]") ? word.substring(0, word.length() - 1) : word;
  }

  private Expecting going(String typed) {
    String word = typed.toLowerCase(Locale.ROOT).replaceAll("[,;:.]+$", "");
    Direction way = null;
    for (Direction one : Direction.values()) {
      String first = one.words(turn()).replaceFirst("^the ", "").split(" ", 2)[0];
      boolean begun = word.length() > 1 && first.startsWith(word);
      if (begun || word.equals(one.word()) || word.equals(String.valueOf(one.ordinal() + 1))) {
        way = one;
      }
    }
    if (way == null) {
      throw new NotUnderstoodException("\"" + shown(typed) + "\" is no way it can go. " + wanted());
    }
    Double none = turn() && way == Direction.SAME ? Double.valueOf(0) : size;
    return new Expecting(quantity, asksWay, way, none, reason, helped);
  }

  private Expecting sized(String typed) {
    double said;
    String word = typed.replaceAll("[,;:]+$", "");
    try {
      said = Math.abs(number(word));
    } catch (NotUnderstoodException e) {
      throw new NotUnderstoodException("\"" + shown(typed) + "\" is no size. " + wanted());
    }
    return new Expecting(quantity, asksWay, direction, said, reason, helped);
  }

  private double number(String word) {
    if (quantity == null) {
      return Turn.parse(word).turns();
    }
    if (!quantity.bracket()) {
      return quantity.value(word);
    }
    if (word.equalsIgnoreCase("touches")) {
      return 0;
    }
    try {
      return Length.parse(word).mm();
    } catch (NotUnderstoodException e) {
      Bracket bracket = BracketParser.parse(word, 0.05);
      return Math.max(0, bracket.middleMm());
    }
  }

  private Expecting because(String typed) {
    String said = typed.strip();
    if (said.length() > LONGEST_REASON) {
      throw new NotUnderstoodException("A reason has at most " + LONGEST_REASON + " characters");
    }
    return new Expecting(quantity, asksWay, direction, size, said, helped);
  }

  /** A sentence that asks for the next part. */
  public String wanted() {
    Part part = next();
    if (part == Part.WAY) {
      return turn()
          ? "Which way: 1 loosen, 2 no turn, 3 tighten?"
          : "Which way: 1 smaller, 2 the same, 3 larger?";
    }
    if (part == Part.SIZE) {
      return quantity == null
          ? "How much of a turn, for example 1/8?"
          : "How much, in " + quantity.unit() + ", for example " + example(quantity) + "?";
    }
    return "Why do you think so? A few words.";
  }

  private static String example(Quantity quantity) {
    return switch (quantity) {
      case RELIEF -> "0.35";
      case BOW_NUT_END, BOW_MIDDLE, BOW_JOINT, BOW_BODY_END, NUT_CLEARANCE -> "0.10";
      case ACTION -> "2.25";
      case INTONATION -> "3";
      case PICKUP_GAP -> "2.5";
      case HUMIDITY -> "48";
      case TEMPERATURE -> "21";
    };
  }

  /**
   * The prediction, once all of it is said.
   *
   * @throws IllegalStateException where something is still to be said
   */
  public Prediction made() {
    if (size == null || reason == null) {
      throw new IllegalStateException("the prediction is not whole yet");
    }
    Direction way = direction == null ? Direction.SAME : direction;
    return new Prediction(way, size, reason, helped);
  }

  private static String shown(String typed) {
    String safe = Printable.of(typed);
    return safe.length() > 40 ? safe.substring(0, 37) + "..." : safe;
  }
}
