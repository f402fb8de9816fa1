package quarterturn.report;

import java.util.List;
import java.util.stream.Collectors;

/** Fret numbers in words. */
public final class Frets {
  private Frets() {}

  /** Fret numbers as a list: "17", "1 and 17", "1, 5 and 17". */
  public static String list(List<Integer> frets) {
    if (frets.isEmpty()) {
      return "";
    }
    String last = frets.get(frets.size() - 1).toString();
    if (frets.size() == 1) {
      return last;
    }
    return frets.subList(0, frets.size() - 1).stream()
            .map(String::valueOf)
            .collect(Collectors.joining(", "))
        + " and "
        + last;
  }

  /** The frets held, in words: "held at fret 1", "held at frets 1 and 17". */
  public static String held(List<Integer> frets) {
    return (frets.size() == 1 ? "held at fret " : "held at frets ") + list(frets);
  }

  /** The fret read over, in words: ", read over fret 8"; empty for fret 0. */
  public static String readOver(int fret) {
    return fret > 0 ? ", read over fret " + fret : "";
  }
}
