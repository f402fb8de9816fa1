package quarterturn.procedure.bench;

/** How far a reading can be relied on, worst first. */
public enum Freshness {
  /** No reading was asked for. */
  NEVER,
  /** The reading was asked for, and could not be taken. */
  MISSED,
  /** Something done since has spoiled the reading. */
  STALE,
  /** The reading was taken off pitch, or before the neck had settled. */
  UNCOUNTED,
  /** The rod was turned since, and nothing was read after it. */
  AFTER_TURN,
  /** The reading counts, but a break lies between: enough to go on by, not for a turn. */
  AGED,
  /** The reading counts. */
  FRESH;

  /** Whether a condition may rest on a reading that is so fresh. */
  public boolean usable() {
    return this == FRESH || this == AGED || this == MISSED;
  }
}
