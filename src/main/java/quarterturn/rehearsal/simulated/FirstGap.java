package quarterturn.rehearsal.simulated;

import java.util.List;
import org.jspecify.annotations.Nullable;
import quarterturn.unit.Bracket;

/** The result of the first reading of the lowest string. */
public enum FirstGap {
  READABLE("a leaf passes"),
  UNDER_A_LEAF("under a leaf"),
  TOUCHING("touches"),
  NOT_READ("not read");

  private final String words;

  FirstGap(String words) {
    this.words = words;
  }

  /** The results of a reading that was taken. */
  public static List<FirstGap> read() {
    return List.of(READABLE, UNDER_A_LEAF, TOUCHING);
  }

  /** Its word in a fleet's JSON, which stays. */
  public String words() {
    return words;
  }

  /** Its words in what is printed. */
  public String shown() {
    return switch (this) {
      case READABLE -> "a gauge passes";
      case UNDER_A_LEAF -> "under a gauge";
      case TOUCHING, NOT_READ -> words;
    };
  }

  public static FirstGap of(@Nullable Bracket reading) {
    if (reading == null) {
      return NOT_READ;
    }
    return !reading.noGap() ? READABLE : reading.highMm() > 0 ? UNDER_A_LEAF : TOUCHING;
  }
}
