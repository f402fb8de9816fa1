package quarterturn.session.store;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Limits;
import quarterturn.session.Carried.Answer;
import quarterturn.session.Carried.Said;
import quarterturn.session.Event;
import quarterturn.session.Neck;
import quarterturn.session.SessionRecord;

/**
 * A time by which the clock or a record must be wrong, so that nobody knows how long ago something
 * was.
 *
 * @param last the time on record
 * @param behind whether the clock stands before it; else it stands so long after it that a wait or
 *     the day's turning would be over by an unlikely leap
 */
record ClockDoubt(Instant last, boolean behind) {
  /**
   * What is to be asked, or null.
   *
   * @param turns whether the session may turn the rod
   */
  static @Nullable ClockDoubt of(Opening opening, boolean turns) {
    List<SessionRecord> believed = believed(opening);
    Limits.Clocks clocks = opening.limits().clocks();
    Instant newest = newest(believed.stream());
    boolean goesOn = opening.session() != null;
    if ((turns || goesOn) && newest != null && clocks.back(newest, opening.now())) {
      return new ClockDoubt(newest, true);
    }
    Instant last = newest(own(opening).filter(believed::contains));
    return last != null
            && leaps(last, times(believed), opening)
            && (waits(opening, last) || (turns && turned(opening, last)))
        ? new ClockDoubt(last, false)
        : null;
  }

  /** The opening with the records that can't have been written by a right clock said to be so. */
  Opening said(Opening opening) {
    Opening now = opening;
    Stream<SessionRecord> wrong =
        behind
            ? believed(opening).stream().filter(one -> one.newest().isAfter(opening.now()))
            : own(opening).filter(one -> one.newest().equals(last));
    for (SessionRecord one : wrong.toList()) {
      now = now.with(new Said(one.newest(), one.session(), Answer.CLOCK, null, null));
    }
    return now;
  }

  /** The sessions of which nobody said, since their last event, that its time is wrong. */
  private static List<SessionRecord> believed(Opening opening) {
    List<SessionRecord> all =
        opening.records().necks().stream().flatMap(neck -> neck.sessions().stream()).toList();
    List<Said> said =
        Stream.concat(all.stream().flatMap(one -> one.said().stream()), opening.said().stream())
            .filter(one -> one.answer() == Answer.CLOCK)
            .toList();
    return all.stream()
        .filter(
            one ->
                said.stream()
                    .noneMatch(s -> s.about().equals(one.session()) && s.at().equals(one.newest())))
        .toList();
  }

  private static Stream<SessionRecord> own(Opening opening) {
    List<Neck> necks = new ArrayList<>(opening.possible());
    necks.add(opening.neck());
    return necks.stream().flatMap(neck -> neck.sessions().stream());
  }

  private static @Nullable Instant newest(Stream<SessionRecord> of) {
    return of.map(SessionRecord::newest).reduce(null, ClockDoubt::later);
  }

  private static @Nullable Instant later(@Nullable Instant one, Instant other) {
    return one == null || other.isAfter(one) ? other : one;
  }

  private static Stream<Instant> times(List<SessionRecord> of) {
    return of.stream().flatMap(one -> Stream.of(one.began(), one.newest()));
  }

  /** Whether no record at all stands in a leap between {@code last} and now. */
  private static boolean leaps(Instant last, Stream<Instant> times, Opening opening) {
    List<Instant> since =
        Stream.concat(times, Stream.of(last, opening.now()))
            .filter(at -> !at.isBefore(last) && !at.isAfter(opening.now()))
            .sorted()
            .toList();
    for (int i = 1; i < since.size(); i++) {
      if (opening.limits().clocks().leaps(since.get(i - 1), since.get(i))) {
        return true;
      }
    }
    return false;
  }

  /** Whether the session that goes on was left in a wait. */
  private static boolean waits(Opening opening, Instant last) {
    return opening.neck().sessions().stream()
        .filter(one -> one.session().equals(opening.session()))
        .anyMatch(one -> waits(one.events(), last));
  }

  private static boolean waits(List<Event> events, Instant last) {
    boolean waits = false;
    for (Event event : events) {
      if (event instanceof Event.WaitBegan began) {
        waits = began.until().isAfter(last);
      } else if (event instanceof Event.Waited) {
        waits = false;
      }
    }
    return waits;
  }

  /** Whether the rod was turned in the day up to the last record. */
  private static boolean turned(Opening opening, Instant last) {
    Instant from = last.minus(opening.limits().day());
    return opening.neck().turns().stream().anyMatch(turn -> turn.when().isAfter(from));
  }
}
