package quarterturn.craft.rod;

import quarterturn.unit.Bracket;
import quarterturn.unit.Turn;

/** Something that happened to a neck and that can be learned from. */
public sealed interface Seen {
  /** Relief was read, settled and at pitch. */
  record Read(Bracket relief) implements Seen {}

  /** The rod was turned; plus tightens. */
  record Turned(Turn turn) implements Seen {}

  /**
   * Time went by in which the neck moved by itself.
   *
   * @param hours how long; positive infinity where something unknown happened to the neck
   * @param away whether it was between two sessions, where others may have moved the neck
   */
  record Rested(double hours, boolean away) implements Seen {
    /** The least rest in hours after which the relief is found anew. */
    private static final double LONG_HOURS = 72;

    public Rested {
      if (!(hours >= 0)) {
        throw new IllegalArgumentException("a rest lasts zero hours or more");
      }
    }

    /** A rest within a session. */
    public Rested(double hours) {
      this(hours, false);
    }

    /** Whether this rest leaves only the rod known, and not where the neck stands. */
    boolean anew() {
      return away || hours >= LONG_HOURS;
    }
  }
}
