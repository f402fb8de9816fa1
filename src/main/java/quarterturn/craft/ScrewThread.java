package quarterturn.craft;

import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import quarterturn.unit.Digits;
import quarterturn.unit.Length;
import quarterturn.unit.NotUnderstoodException;
import quarterturn.unit.Printable;
import quarterturn.unit.Turn;

/**
 * A screw thread by its pitch, the way it moves in one turn.
 *
 * <p>Metric threads by ISO 261: {@code M3x0.5} states its pitch, {@code M3} alone means the coarse
 * series. Unified threads by ASME B1.1: {@code 10-32} or {@code 1/4-28 UNF}, pitch = 25.4 mm /
 * threads per inch, exact.
 *
 * @param name as it is called
 * @param pitch above zero
 */
public record ScrewThread(String name, Length pitch) {
  /** Coarse pitches in mm (ISO 261; M1.6 to M2.5 from memory). */
  private static final Map<String, Double> COARSE =
      Map.of("1.6", 0.35, "2", 0.4, "2.5", 0.45, "3", 0.5, "4", 0.7, "5", 0.8, "6", 1.0, "8", 1.25);

  private static final Pattern METRIC =
      Pattern.compile("m([1-9]\\d?(?:[.,]\\d{1,2})?)(?:\\s*[x×]\\s*(\\d{0,2}(?:[.,]\\d{1,3})?))?");
  private static final Pattern UNIFIED =
      Pattern.compile(
          "#?(\\d{1,2}|[1-9]\\d?/[1-9]\\d?)\\s*-\\s*(\\d{1,3})(?:\\s*(unc|unf|unef|un))?");

  public ScrewThread {
    if (!(pitch.mm() > 0)) {
      throw new NotUnderstoodException("a thread's pitch must be above zero");
    }
  }

  /**
   * Reads a thread's name, or a bare pitch such as {@code 0.5mm}.
   *
   * @throws NotUnderstoodException with the spellings that are understood
   */
  public static ScrewThread parse(String typed) {
    String text = Digits.plain(typed);
    Matcher metric = METRIC.matcher(text);
    if (metric.matches()) {
      return metric(typed, metric.group(1).replace(',', '.'), metric.group(2));
    }
    Matcher unified = UNIFIED.matcher(text);
    if (unified.matches()) {
      int perInch = Integer.parseInt(unified.group(2));
      if (perInch == 0) {
        throw no(typed);
      }
      String series =
          unified.group(3) == null ? "" : " " + unified.group(3).toUpperCase(Locale.ROOT);
      return new ScrewThread(
          unified.group(1) + "-" + perInch + series, Length.inches(1.0 / perInch));
    }
    try {
      Length pitch = Length.parse(text);
      return new ScrewThread("pitch " + pitch, pitch);
    } catch (NotUnderstoodException e) {
      throw no(typed);
    }
  }

  private static ScrewThread metric(String typed, String size, String pitch) {
    if (pitch != null && !pitch.isEmpty()) {
      return new ScrewThread(
          "M" + size + "x" + pitch.replace(',', '.'), Length.parse(pitch + " mm"));
    }
    Double coarse = COARSE.get(size);
    if (coarse == null || pitch != null) {
      throw new NotUnderstoodException(
          "\"" + Printable.of(typed) + "\" needs its pitch; type for example M3x0.5");
    }
    return new ScrewThread("M" + size, Length.mm(coarse));
  }

  private static NotUnderstoodException no(String typed) {
    return new NotUnderstoodException(
        "\""
            + Printable.of(typed)
            + "\" is not a thread; type for example M3x0.5, 10-32, 1/4-28 UNF or a pitch in mm");
  }

  /** How far the screw moves in a turn. */
  public Length travel(Turn turn) {
    return Length.mm(pitch.mm() * turn.turns());
  }
}
