package quarterturn.soak;

import java.util.EnumMap;
import java.util.Map;

/** What happened in all rounds. */
final class Tally {
  private final Map<Count, Integer> counts = new EnumMap<>(Count.class);

  /** What is counted. */
  enum Count {
    ROUNDS("rounds"),
    INPUTS("inputs"),
    ACKNOWLEDGED("acknowledged answers looked up"),
    TURNS("turns asked for"),
    KILLS("kills"),
    SIGNALS("TERM and HUP"),
    FULL_DISKS("full disks"),
    RESIZES("resizes"),
    PASTES("pastes"),
    STOPPED("stopped and continued"),
    SECONDS("second processes"),
    LESSONS("lesson benches with a desk"),
    FINDINGS("findings");

    private final String words;

    Count(String words) {
      this.words = words;
    }
  }

  void add(Count what) {
    counts.merge(what, 1, Integer::sum);
  }

  void add(Count what, int many) {
    counts.merge(what, many, Integer::sum);
  }

  int of(Count what) {
    return counts.getOrDefault(what, 0);
  }

  @Override
  public String toString() {
    StringBuilder all = new StringBuilder();
    for (Count what : Count.values()) {
      all.append(all.isEmpty() ? "" : ", ").append(what.words).append(' ').append(of(what));
    }
    return all.toString();
  }
}
