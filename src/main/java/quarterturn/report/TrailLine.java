package quarterturn.report;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import quarterturn.procedure.Feel;
import quarterturn.procedure.kind.Which;
import quarterturn.session.Overview.Entry;
import quarterturn.unit.Bracket;

/** The row of readings and turns: "0.60 to 0.65 &gt; loosened 1/8 &gt; 0.65 to 0.70". */
public final class TrailLine {
  private static final String THEN = " > ";

  private TrailLine() {}

  /**
   * The whole row, in millimetres and turns.
   *
   * @param trail oldest first; the string is named where readings of more than one are in it
   */
  public static String of(List<Entry> trail) {
    return String.join(THEN, parts(trail));
  }

  /** As {@link #of}, but only the newest entries that fit {@code columns}, after "... &gt; ". */
  public static String fitting(List<Entry> trail, int columns) {
    List<String> parts = parts(trail);
    String whole = String.join(THEN, parts);
    for (int from = 1; whole.length() > columns && from < parts.size(); from++) {
      whole = "..." + THEN + String.join(THEN, parts.subList(from, parts.size()));
    }
    return whole;
  }

  private static List<String> parts(List<Entry> trail) {
    Set<Which> strings = new HashSet<>();
    for (Entry entry : trail) {
      if (entry instanceof Entry.Reading reading) {
        strings.add(reading.which());
      }
    }
    List<String> parts = new ArrayList<>();
    for (Entry entry : trail) {
      parts.add(part(entry, strings.size() > 1));
    }
    return parts;
  }

  private static String part(Entry entry, boolean named) {
    if (entry instanceof Entry.Reading reading) {
      String string = named ? reading.which().word() + " " : "";
      return string + gap(reading.bracket()) + (reading.stale() ? " (stale)" : "");
    }
    Entry.Turned turned = (Entry.Turned) entry;
    String feel = turned.feel() == Feel.SMOOTH ? "" : " (" + turned.feel().word() + ")";
    return TurnWords.done(turned.turn()).replaceAll(" turns?$", "") + feel;
  }

  /** A reading without its unit: "0.60 to 0.65", "touches". */
  private static String gap(Bracket bracket) {
    return bracket.toString().replace(" mm", "").replace(" (no gap)", "");
  }
}
