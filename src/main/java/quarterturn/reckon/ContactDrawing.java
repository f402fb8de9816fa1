package quarterturn.reckon;

import java.util.ArrayList;
import java.util.List;
import quarterturn.craft.ContactMap;
import quarterturn.unit.Decimals;

/** A contact map in characters: a row for each stopped fret, a column for each fret beyond. */
final class ContactDrawing {
  /** A gap below this is one that a careful player still hears at times; a choice of ours. */
  private static final double NEAR_MM = 0.1;

  private ContactDrawing() {}

  static List<String> lines(ContactMap map) {
    List<String> lines = new ArrayList<>();
    StringBuilder head = new StringBuilder("  stopped    over fret");
    lines.add(head.toString());
    StringBuilder numbers = new StringBuilder("  at fret ");
    for (int n = 2; n <= map.last(); n++) {
      numbers.append(n % 2 == 0 ? "%2d".formatted(n) : "  ");
    }
    lines.add(numbers.toString());
    for (int k = 1; k < map.last(); k++) {
      StringBuilder line = new StringBuilder("  %4d    ".formatted(k));
      for (int n = 2; n <= map.last(); n++) {
        line.append(' ').append(n > k ? mark(map.marginMm(k, n)) : ' ');
      }
      lines.add(line.toString().stripTrailing());
    }
    lines.add("  # strikes   + within " + Decimals.print(NEAR_MM, 1) + " mm   . clear");
    return lines;
  }

  private static char mark(double margin) {
    return margin < 0 ? '#' : margin < NEAR_MM ? '+' : '.';
  }
}
