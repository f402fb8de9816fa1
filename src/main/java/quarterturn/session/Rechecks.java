package quarterturn.session;

import java.time.Duration;
import java.util.List;

/**
 * When an instrument is looked at again. The numbers are our policy on common practice, no source:
 * wood goes on moving for a day after a turn and a little for a week, and a neck follows the
 * seasons.
 */
final class Rechecks {
  private static final String RELIEF = "relief";

  /** After the rod was turned, the soonest first. */
  static final List<Recheck> AFTER_TURN =
      List.of(
          new Recheck(
              Due.Why.DAY,
              Duration.ofHours(24),
              RELIEF,
              "A day after the rod was turned, read the relief again."),
          new Recheck(
              Due.Why.WEEK,
              Duration.ofDays(7),
              RELIEF,
              "A week after the rod was turned, read the relief again."));

  /** After any session. */
  static final Recheck SEASON =
      new Recheck(
          Due.Why.SEASON,
          Duration.ofDays(90),
          "season",
          "A season after the last session, see whether the instrument has moved.");

  /** A reading answers a re-check from this part of its time on; sooner, the wood had no time. */
  private static final int PART = 2;

  private Rechecks() {}

  /**
   * One re-check.
   *
   * @param after how long after a session's end
   * @param procedure what is begun for it
   * @param what one sentence
   */
  record Recheck(Due.Why why, Duration after, String procedure, String what) {
    /** How long after the session's end a reading must be to answer it. */
    Duration answeredFrom() {
      return after.dividedBy(PART);
    }
  }
}
