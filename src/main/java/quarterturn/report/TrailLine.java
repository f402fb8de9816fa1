package quarterturn.report;

import java.util.List;
import java.util.stream.Collectors;
import quarterturn.procedure.condition.Feel;
import quarterturn.session.Overview.Entry;
import quarterturn.unit.Bracket;

/** The row of readings and turns: "0.60 to 0.65 &gt; loosened 1/8 &gt; 0.65 to 0.70". */
public final class TrailLine {
  private TrailLine() {}

  /**
   * The whole row, in millimetres and turns.
   *
   * @param trail oldest first; readings name their string where they are of more than one
   */
  public static String of(List<Entry> trail) {
    long strings =
        trail.stream()
            .filter(Entry.Reading.class::isInstance)
            .map(reading -> ((Entry.Reading) reading).which())
            .distinct()
            .count();
    return trail.stream().map(entry -> part(entry, strings > 1)).collect(Collectors.joining(" > "));
  }

  private static String part(Entry entry, boolean named) {
    if (entry instanceof Entry.Reading reading) {
      String string = named ? reading.which().word() + " " : "";
      return string + gap(reading.bracket()) + (reading.stale() ? " (stale)" : "");
    }
    Entry.Turned turned = (Entry.Turned) entry;
    Feel felt = turned.feel();
    String feel = felt == null || felt == Feel.SMOOTH ? "" : " (" + felt.word() + ")";
    return TurnWords.done(turned.turn(), turned.sure()).replaceAll(" turns?(?=,|$)", "") + feel;
  }

  /** A reading without its unit: "0.60 to 0.65", "touches". */
  private static String gap(Bracket bracket) {
    return bracket.toString().replace(" mm", "").replace(" (no gap)", "");
  }
}
