package quarterturn.procedure.check;

/** What there is of a reading, worst first. */
enum Held {
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
  /** It counts. A break may lie between: the engine sees to that before a turn. */
  FRESH;

  /** Whether a condition may rest on it. */
  boolean usable() {
    return this == FRESH || this == MISSED;
  }
}
