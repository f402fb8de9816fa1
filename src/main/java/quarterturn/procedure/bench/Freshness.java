package quarterturn.procedure.bench;

/** What there is of a reading, worst first. */
public enum Freshness {
  /** Nobody was asked for it. */
  NEVER,
  /** It was asked for, and could not be read. */
  MISSED,
  /** Something done since has spoiled it. */
  STALE,
  /** It was taken off pitch, or before the neck had settled. */
  UNCOUNTED,
  /** The rod was turned, and nothing was read since. */
  AFTER_TURN,
  /** It counts, but a break lies between: enough to go on by, not for a turn. */
  AGED,
  /** It counts. */
  FRESH;

  /** Whether a condition may rest on it. */
  public boolean usable() {
    return this == FRESH || this == AGED || this == MISSED;
  }
}
