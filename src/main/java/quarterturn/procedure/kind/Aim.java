package quarterturn.procedure.kind;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import quarterturn.craft.Window;
import quarterturn.unit.Cents;
import quarterturn.unit.Decimals;
import quarterturn.unit.Length;
import quarterturn.unit.NotUnderstoodException;
import quarterturn.unit.Printable;
import quarterturn.unit.Worded;

/**
 * The readings for which an instrument can have a window of its own, in millimetres, and in cents
 * for intonation. Low and high are the lowest and the highest string.
 */
public enum Aim implements Worded {
  RELIEF("0.30..0.45 mm", 0, 2),
  NUT_CLEARANCE("0.3..0.5 mm", 0, 2),
  ACTION_LOW("1.8..2.2 mm", 0.2, 10),
  ACTION_HIGH("1.4..1.8 mm", 0.2, 10),
  INTONATION("-2..2 cents", -50, 50),
  PICKUP_LOW("2.5..3.5 mm", 0.2, 20),
  PICKUP_HIGH("2.0..3.0 mm", 0.2, 20);

  private static final Pattern TYPED = Pattern.compile("(.+?)(?:\\.\\.|\\s+to\\s+)(.+)");
  private static final Pattern BARE = Pattern.compile("[-+]?[\\d.,/ ]+");
  private static final int LONGEST = 40;

  private final String example;
  private final double least;
  private final double most;

  /** An aim with the limits of its windows, wide since they only catch a slip of the unit. */
  Aim(String example, double least, double most) {
    this.example = example;
    this.least = least;
    this.most = most;
  }

  /** An example of a window as it may be typed. */
  public String example() {
    return example;
  }

  /** The unit: "mm" or "cents". */
  public String unit() {
    return this == INTONATION ? "cents" : "mm";
  }

  /**
   * Reads a typed window: {@code 0.30..0.45}, {@code 12..18 thou}, {@code 0.3 to 0.45 mm}. A unit
   * at the end holds for both ends.
   *
   * @throws NotUnderstoodException with what is allowed
   */
  public Window window(String typed) {
    Matcher m = TYPED.matcher(typed.strip().toLowerCase(Locale.ROOT));
    if (typed.length() > LONGEST || !m.matches()) {
      throw new NotUnderstoodException(
          "\"" + Printable.of(typed) + "\" is not a window; type for example " + example);
    }
    String high = m.group(2).strip();
    String low = m.group(1).strip();
    if (BARE.matcher(low).matches()) {
      low += " " + BARE.matcher(high).replaceFirst("");
    }
    return ordered(number(low), number(high));
  }

  private double number(String typed) {
    return this == INTONATION ? Cents.parse(typed).cents() : Length.parse(typed).mm();
  }

  private static Window ordered(double low, double high) {
    double from = Decimals.kept(low);
    double to = Decimals.kept(high);
    if (!(from < to)) {
      throw new NotUnderstoodException("the first number of a window must be the smaller one");
    }
    return new Window(from, to);
  }

  /**
   * The window rounded to four decimals, as it is stored.
   *
   * @throws NotUnderstoodException where no instrument has such a window
   */
  public Window check(Window window) {
    Window kept = ordered(window.lowMm(), window.highMm());
    if (kept.lowMm() < least || kept.highMm() > most) {
      throw new NotUnderstoodException(
          "a window of %s lies between %s and %s %s, not %s"
              .formatted(word(), Decimals.plain(least), Decimals.plain(most), unit(), text(kept)));
    }
    return kept;
  }

  /** The window as {@link #window} reads it: "0.3..0.45 mm". */
  public String text(Window window) {
    return Decimals.plain(window.lowMm()) + ".." + Decimals.plain(window.highMm()) + " " + unit();
  }
}
