package quarterturn.procedure.condition;

import org.jspecify.annotations.Nullable;
import quarterturn.craft.Window;
import quarterturn.procedure.kind.Quantity;
import quarterturn.unit.Bracket;

/**
 * How a reading stands to the window, decided on the whole bracket. The first six cover every case
 * and exclude each other; the leaning ones split {@link #UNDECIDED} by the bracket's middle.
 */
public enum Verdict {
  NOT_MEASURED("cannot be measured"),
  TOUCHES("touches"),
  BELOW("below target"),
  IN("in target"),
  UNDECIDED("undecided"),
  ABOVE("above target");

  private final String words;

  Verdict(String words) {
    this.words = words;
  }

  /** The words that follow the quantity in a condition. */
  public String words() {
    return words;
  }

  /**
   * The verdict on a reading of a quantity. Over fret 1 a string that touches has no gap, and no
   * less: it is in a window that begins there, as that of a zero fret does.
   */
  public static Verdict of(Quantity quantity, Bracket reading, Window window) {
    boolean rests = quantity == Quantity.NUT_CLEARANCE && reading.noGap() && window.lowMm() <= 0;
    return rests && reading.highMm() <= window.highMm() ? IN : of(reading, window);
  }

  /** The verdict on a reading of a bow, which can go below no gap. */
  public static Verdict of(Bracket reading, Window window) {
    double slack = 1e-9;
    if (reading.lowMm() >= window.lowMm() - slack && reading.highMm() <= window.highMm() + slack) {
      return IN;
    }
    if (reading.noGap() && reading.highMm() <= window.lowMm() + slack) {
      return TOUCHES;
    }
    if (reading.highMm() <= window.lowMm() + slack) {
      return BELOW;
    }
    return reading.lowMm() >= window.highMm() - slack ? ABOVE : UNDECIDED;
  }

  /**
   * Where an undecided reading leans: {@link #BELOW}, {@link #IN} or {@link #ABOVE}; or {@link
   * #UNDECIDED} where it leans nowhere, because one of its ends is unknown or it reaches past both
   * ends of the window. Half of such a bracket may well lie on the other side.
   */
  public static Verdict leaning(Bracket reading, Window window) {
    boolean pastBoth = reading.lowMm() < window.lowMm() && reading.highMm() > window.highMm();
    if (!reading.bounded() || pastBoth) {
      return UNDECIDED;
    }
    double middle = reading.middleMm();
    return middle < window.lowMm() ? BELOW : middle > window.highMm() ? ABOVE : IN;
  }

  /**
   * The side on which a reading is just outside its window, {@link #BELOW} or {@link #ABOVE}: it
   * straddles that end alone, or lies outside by less than its own width and the gauge's step. Null
   * where it is inside, plainly outside, or has an end that is unknown.
   *
   * @param step the gauge's step, in millimetres; leaves far apart do not make a neck that is
   *     plainly out look near
   */
  public static @Nullable Verdict near(Bracket reading, Window window, double step) {
    double slack = 1e-9;
    double most = Math.min(reading.widthMm(), step) - slack;
    boolean below =
        reading.lowMm() < window.lowMm() - slack && window.lowMm() - reading.highMm() < most;
    boolean above =
        reading.highMm() > window.highMm() + slack && reading.lowMm() - window.highMm() < most;
    return !reading.bounded() || below == above ? null : below ? BELOW : ABOVE;
  }
}
