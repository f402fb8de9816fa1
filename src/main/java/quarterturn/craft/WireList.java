package quarterturn.craft;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import quarterturn.unit.Digits;
import quarterturn.unit.Length;
import quarterturn.unit.NotUnderstoodException;

/**
 * Diameters of a set of strings as people type them: {@code .105 .085 .065 .045}, {@code 0.25, 0.33
 * mm}, {@code 46 36 26 17 13 10 thou}.
 *
 * <p>A unit holds for the numbers before it that have none. Numbers without any unit are inches
 * where one of them would be thinner than any string in millimetres, else millimetres, since a set
 * is written in one unit.
 */
public final class WireList {
  private static final Pattern BETWEEN = Pattern.compile("\\s*[;,]\\s+|\\s*;\\s*|\\s+");
  private static final Pattern PART = Pattern.compile("([-+]?[\\d.,/]*)(.*)");
  private static final double INCHES_BELOW = 0.15;
  private static final int MOST = 12;

  private final List<Length> done = new ArrayList<>();
  private final List<String> bare = new ArrayList<>();

  private WireList() {}

  /**
   * Reads the diameters of a set for an instrument.
   *
   * @param strings how many strings it has
   * @throws NotUnderstoodException with what may be typed
   */
  public static List<Length> parse(String typed, int strings) {
    List<Length> set = parse(typed);
    if (set.size() != strings) {
      throw new NotUnderstoodException(
          "there are %d strings; give as many gauges, not %d".formatted(strings, set.size()));
    }
    return set;
  }

  /**
   * Reads the diameters of a set.
   *
   * @throws NotUnderstoodException with what may be typed
   */
  public static List<Length> parse(String typed) {
    WireList list = new WireList();
    for (String part : BETWEEN.split(Digits.plain(typed), 4 * MOST)) {
      list.take(part);
    }
    boolean inches = list.bare.stream().anyMatch(n -> Length.parse(n).mm() < INCHES_BELOW);
    list.close(inches ? "in" : "mm");
    return List.copyOf(list.done);
  }

  /** A diameter as it is typed in inches: {@code .105}. */
  public static String inch(Length gauge) {
    return String.format(Locale.ROOT, "%.3f", gauge.inches()).substring(1);
  }

  private void take(String part) {
    Matcher m = PART.matcher(part);
    if (!m.matches() || (m.group(1).isEmpty() && bare.isEmpty())) {
      Length.parse(part); // says what may be typed
    } else {
      if (!m.group(1).isEmpty()) {
        bare.add(m.group(1));
      }
      if (!m.group(2).isEmpty()) {
        close(m.group(2));
      }
    }
  }

  private void close(String unit) {
    for (String number : bare) {
      done.add(StringGauge.parseWire(number + " " + unit));
    }
    bare.clear();
  }
}
