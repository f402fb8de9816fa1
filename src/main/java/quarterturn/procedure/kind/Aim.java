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
  RELIEF(Quantity.RELIEF, "0.30..0.45 mm"),
  NUT_CLEARANCE(Quantity.NUT_CLEARANCE, "0.3..0.5 mm"),
  ACTION_LOW(Quantity.ACTION, "1.8..2.2 mm"),
  ACTION_HIGH(Quantity.ACTION, "1.4..1.8 mm"),
  INTONATION(Quantity.INTONATION, "-2..2 cents"),
  PICKUP_LOW(Quantity.PICKUP_GAP, "2.5..3.5 mm"),
  PICKUP_HIGH(Quantity.PICKUP_GAP, "2.0..3.0 mm");

  private static final Pattern TYPED = Pattern.compile("(.+?)(?:\\.\\.|\\s+to\\s+)(.+)");
  private static final Pattern BARE = Pattern.compile("[-+]?[\\d.,/ ]+");
  private static final int LONGEST = 40;

  private final Quantity quantity;
  private final String example;

  Aim(Quantity quantity, String example) {
    this.quantity = quantity;
    this.example = example;
  }

  /** What is read. */
  public Quantity quantity() {
    return quantity;
  }

  /** An example of a window as it may be typed. */
  public String example() {
    return example;
  }

  /** The unit: "mm" or "cents". */
  public String unit() {
    return quantity.unit();
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
          "\"" + Printable.of(typed) + "\" is not a range; type for example " + example);
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
      throw new NotUnderstoodException("the first number of a range must be the smaller one");
    }
    return new Window(from, to);
  }

  /**
   * The window rounded to four decimals, as it is stored.
   *
   * @throws NotUnderstoodException where no instrument has such a window
   */
  public Window check(Window window, Bounds bounds) {
    return bounds.window(ordered(window.lowMm(), window.highMm()));
  }

  /** The window as {@link #window} reads it: "0.3..0.45 mm". */
  public String text(Window window) {
    return Decimals.plain(window.lowMm()) + ".." + Decimals.plain(window.highMm()) + " " + unit();
  }
}
