package quarterturn.unit;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * An amount of rotation, in whole turns. For the rod, plus tightens and minus loosens.
 *
 * <p>{@link #parse} takes {@code 1/8}, {@code 1/8 turn}, {@code 1 1/4 turns}, {@code 0.125}, {@code
 * 45 deg}.
 */
public record Turn(double turns) implements Comparable<Turn> {
  /** Tolerance in turns when turns are compared, since no hand can tell a thousandth of one. */
  public static final double SLACK = 0.001;

  public static final Turn NONE = new Turn(0);
  public static final Turn SIXTEENTH = new Turn(1 / 16.0);
  public static final Turn EIGHTH = new Turn(1 / 8.0);
  public static final Turn QUARTER = new Turn(1 / 4.0);

  private static final List<String> HOURS =
      List.of(
          "twelve", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten",
          "eleven");

  private static final Pattern TYPED =
      Pattern.compile(
          "([-+]?)(?:(?:(\\d{1,2})\\s+)?(\\d{1,3})\\s*/\\s*(\\d{1,3})|(\\d{0,4}(?:[.,]\\d{0,15})?))\\s*"
              + "(turn|turns|deg|degrees|°)?");

  public Turn {
    if (!Double.isFinite(turns)) {
      throw new IllegalArgumentException("a turn must be a finite number");
    }
  }

  /**
   * Reads a typed turn.
   *
   * @throws NotUnderstoodException with the spellings that are understood
   */
  public static Turn parse(String typed) {
    Matcher m = TYPED.matcher(Digits.unended(Digits.plain(typed)));
    if (!m.matches()) {
      throw no(typed);
    }
    double part = Typed.number(m.group(3), m.group(4), m.group(5));
    if (!Double.isFinite(part)) {
      throw no(typed);
    }
    double number = m.group(2) == null ? part : Double.parseDouble(m.group(2)) + part;
    String unit = m.group(6) == null ? "turn" : m.group(6);
    double turns = unit.startsWith("turn") ? number : number / 360;
    return new Turn("-".equals(m.group(1)) ? -turns : turns);
  }

  private static NotUnderstoodException no(String typed) {
    return Typed.no(typed, "a part of a turn", "1/8, 0.125 or 45 deg");
  }

  public Turn plus(Turn other) {
    return new Turn(turns + other.turns);
  }

  public Turn opposite() {
    return new Turn(turns == 0 ? 0 : -turns);
  }

  /** The amount without its direction. */
  public Turn size() {
    return new Turn(Math.abs(turns));
  }

  /** Whether this turn is at least as far as {@code other}, within a thousandth of a turn. */
  public boolean atLeast(Turn other) {
    return turns >= other.turns - SLACK;
  }

  /**
   * The direction, "clockwise" or "anticlockwise", seen along the neck from the end of the rod nut.
   * Clockwise tightens an ordinary rod and makes the gap smaller, wherever its nut sits and
   * whichever hand plays. Common practice, no source. Some rods work the other way round, which
   * only the gauge shows.
   */
  public String sense() {
    return turns > 0 ? "clockwise" : "anticlockwise";
  }

  /**
   * Where the hour hand of a clock that stood at 12 comes to by this turn: "from 12 to half past
   * one". Empty where that is no whole quarter of an hour.
   */
  public String clock() {
    double quarters = turns * HOURS.size() * 4;
    if (!whole(quarters)) {
      return "";
    }
    int at = Math.floorMod((int) Math.rint(quarters), HOURS.size() * 4);
    String hour = HOURS.get(at / 4);
    String next = HOURS.get((at / 4 + 1) % HOURS.size());
    return "from 12 to "
        + List.of(hour, "a quarter past " + hour, "half past " + hour, "a quarter to " + next)
            .get(at % 4);
  }

  public double degrees() {
    return turns * 360;
  }

  @Override
  public int compareTo(Turn other) {
    return Double.compare(turns, other.turns);
  }

  /**
   * The amount without direction: a fraction where it is one to four decimals, "1/8 turn", "3/16
   * turn", "1 turn", else a decimal number with at most four digits after the point.
   */
  @Override
  public String toString() {
    double size = Math.abs(turns);
    String digits = Decimals.plain(size);
    double printed = Double.parseDouble(digits);
    for (int below : new int[] {1, 2, 4, 8, 16, 32}) {
      if (whole(size * below) || whole(printed * below)) {
        return fraction((int) Math.rint(size * below), below);
      }
    }
    return digits + (size > 1 ? " turns" : " turn");
  }

  /** The amount with a minus where it loosens: "-1/8 turn". */
  public String signed() {
    return (turns < 0 && !toString().equals(fraction(0, 1)) ? "-" : "") + this;
  }

  private static boolean whole(double number) {
    return Math.abs(number - Math.rint(number)) < 1e-6;
  }

  private static String fraction(int above, int below) {
    if (above == 0) {
      return "no turn";
    }
    int whole = above / below;
    int rest = above % below;
    String part = rest == 0 ? "" : rest + "/" + below;
    if (whole == 0) {
      return part + " turn";
    }
    return whole + (rest == 0 ? "" : " " + part) + (whole == 1 && rest == 0 ? " turn" : " turns");
  }
}
