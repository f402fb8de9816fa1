package quarterturn.report;

import java.util.ArrayList;
import java.util.List;
import quarterturn.craft.ContactMap;
import quarterturn.unit.Decimals;

/** A contact map in characters: a row for each stopped fret, a column for each fret beyond. */
public final class ContactDrawing {
  /** Gap below which a careful player may still hear the string touch; an estimate of ours. */
  private static final double NEAR_MM = 0.1;

  private ContactDrawing() {}

  /**
   * The map as lines of text, 10 columns and two more for each fret wide: the open string, then
   * stopped frets.
   *
   * @param every 1 for all stopped frets, 2 for every other one
   */
  public static List<String> lines(ContactMap map, int every) {
    List<String> lines = new ArrayList<>();
    lines.add("  stopped    over fret");
    StringBuilder numbers = new StringBuilder("  at fret ");
    for (int n = 1; n <= map.last(); n++) {
      numbers.append(n % 2 == 0 ? "%2d".formatted(n) : "  ");
    }
    lines.add(numbers.toString().stripTrailing());
    for (int k = 0; k < map.last(); k += every) {
      StringBuilder line = new StringBuilder("  %4s    ".formatted(k == 0 ? "open" : k));
      for (int n = 1; n <= map.last(); n++) {
        line.append(' ').append(n > k ? mark(map.marginMm(k, n)) : ' ');
      }
      lines.add(line.toString().stripTrailing());
    }
    lines.add("  # strikes   + within " + Decimals.print(NEAR_MM, 1) + " mm   . clear");
    return lines;
  }

  /** The map in sentences, for readers who don't see the drawing. */
  public static List<String> sentences(ContactMap map) {
    List<String> lines = new ArrayList<>();
    for (int k = 0; k < map.last(); k++) {
      String strikes = frets(map, k, '#');
      String near = frets(map, k, '+');
      if (!strikes.isEmpty() || !near.isEmpty()) {
        lines.add(
            (k == 0 ? "Open: " : "Stopped at fret " + k + ": ")
                + (strikes.isEmpty() ? "" : "strikes over " + strikes)
                + (strikes.isEmpty() || near.isEmpty() ? "" : "; ")
                + (near.isEmpty() ? "" : "near over " + near)
                + ".");
      }
    }
    if (lines.isEmpty()) {
      lines.add("It clears every fret, open and from every stopped fret.");
    }
    return lines;
  }

  private static String frets(ContactMap map, int k, char mark) {
    List<Integer> frets = new ArrayList<>();
    for (int n = k + 1; n <= map.last(); n++) {
      if (mark(map.marginMm(k, n)) == mark) {
        frets.add(n);
      }
    }
    return frets.isEmpty() ? "" : Frets.list(frets);
  }

  private static char mark(double margin) {
    return margin < 0 ? '#' : margin < NEAR_MM ? '+' : '.';
  }
}
