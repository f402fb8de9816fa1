package quarterturn.procedure.kind;

import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import quarterturn.craft.Window;

/**
 * Windows of a quantity on an instrument's strings: for the two outer ones, with those between
 * lying evenly between them, and for single strings that have their own.
 *
 * @param low for the lowest of the strings without a window of their own
 * @param high for the highest of them
 * @param own windows of single strings, by index; 0 is the lowest string
 * @param source where they come from
 */
public record Ends(Window low, Window high, Map<Integer, Window> own, String source) {
  public Ends {
    own = Map.copyOf(own);
  }

  public Ends(Window low, Window high, String source) {
    this(low, high, Map.of(), source);
  }

  /** One window for every string. */
  public static Ends all(Window window, String source) {
    return new Ends(window, window, source);
  }

  /**
   * The window of one string.
   *
   * @param index 0 for the lowest string
   * @param strings how many there are
   * @param course how many strings lie side by side as one, which share their window
   */
  public Window at(int index, int strings, int course) {
    Window its = own.get(index);
    boolean even = low.lowMm() == high.lowMm() && low.highMm() == high.highMm();
    if (its != null || even) {
      return its == null ? low : its;
    }
    List<Integer> rest =
        IntStream.range(0, strings)
            .filter(i -> !own.containsKey(i))
            .mapToObj(i -> i / course)
            .distinct()
            .toList();
    double share = rest.size() < 2 ? 0 : (double) rest.indexOf(index / course) / (rest.size() - 1);
    return new Window(
        between(low.lowMm(), high.lowMm(), share), between(low.highMm(), high.highMm(), share));
  }

  private static double between(double one, double other, double share) {
    // To hundredths, as a gauge reads them.
    return Math.rint(100 * (one + (other - one) * share)) / 100;
  }
}
