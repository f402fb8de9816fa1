package quarterturn.session.engine;

import java.time.Instant;
import org.jspecify.annotations.Nullable;
import quarterturn.session.Event;

/**
 * What is under way or still to be asked, apart from the present step.
 *
 * @param open the turn that was asked for, or null
 * @param undoAsked whether the last turn is to be taken back next
 * @param recalling whether the person has to say if that turn was made
 * @param waiting the wait that is under way, or null
 * @param putOff how many times in a row a turn was put off since no reading was fresh, those not
 *     counted where the person was slow
 * @param away the break that has just ended, until the person was told of it; or null
 * @param fault the fault of the procedure, or null
 * @param refused why the session can't go on without a result that is not taken again; or null
 * @param ended how the session ended, or null
 */
record Pending(
    Event.@Nullable Offered open,
    boolean undoAsked,
    boolean recalling,
    Event.@Nullable WaitBegan waiting,
    int putOff,
    @Nullable Break away,
    @Nullable String fault,
    @Nullable String refused,
    Event.@Nullable Ended ended) {
  static final Pending NOTHING = new Pending(null, false, false, null, 0, null, null, null, null);

  /**
   * A break that has just ended.
   *
   * @param left when the person left, or the last event before a crash
   * @param standing the state that the instrument was left in
   * @param stale whether the break made a fresh reading stale
   */
  record Break(Instant left, Instant back, String standing, boolean stale) {}

  Pending offered(Event.Offered turn) {
    return new Pending(turn, undoAsked, recalling, waiting, putOff, away, fault, refused, ended);
  }

  /** The turn that was asked for is dropped and the last turn is to be taken back. */
  Pending undo() {
    return new Pending(null, true, recalling, waiting, putOff, away, fault, refused, ended);
  }

  /** The wish to take a turn back is dropped, to be asked for again. */
  Pending undoForgotten() {
    return new Pending(open, false, recalling, waiting, putOff, away, fault, refused, ended);
  }

  Pending recalling(boolean now) {
    return new Pending(open, undoAsked, now, waiting, putOff, away, fault, refused, ended);
  }

  /** The turn that was asked for is over, made or not. */
  Pending turnOver(int nowPutOff) {
    return new Pending(null, false, false, waiting, nowPutOff, away, fault, refused, ended);
  }

  Pending putOffOnceMore() {
    return new Pending(
        open, undoAsked, recalling, waiting, putOff + 1, away, fault, refused, ended);
  }

  Pending waiting(Event.@Nullable WaitBegan now) {
    return new Pending(open, undoAsked, recalling, now, putOff, away, fault, refused, ended);
  }

  Pending away(@Nullable Break now) {
    return new Pending(open, undoAsked, recalling, waiting, putOff, now, fault, refused, ended);
  }

  Pending fault(String now) {
    return new Pending(open, undoAsked, recalling, waiting, putOff, away, now, refused, ended);
  }

  Pending refused(String now) {
    return new Pending(open, undoAsked, recalling, waiting, putOff, away, fault, now, ended);
  }

  Pending ended(Event.Ended now) {
    return new Pending(open, undoAsked, recalling, waiting, putOff, away, fault, refused, now);
  }
}
