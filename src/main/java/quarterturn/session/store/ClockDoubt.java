package quarterturn.session.store;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Limits;
import quarterturn.session.Carried.Answer;
import quarterturn.session.Carried.Said;
import quarterturn.session.Event;
import quarterturn.session.Neck;

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
    List<Dated> believed = believed(opening);
    Limits.Clocks clocks = opening.limits().clocks();
    Instant newest = newest(believed);
    boolean goesOn = opening.session() != null;
    if ((turns || goesOn) && newest != null && clocks.back(newest, opening.now())) {
      return new ClockDoubt(newest, true);
    }
    Instant last = newest(own(opening, believed));
    return last != null
            && leaps(last, believed, opening)
            && (waits(opening, last) || (turns && turned(opening, last)))
        ? new ClockDoubt(last, false)
        : null;
  }

  /** The opening with the records that can't have been written by a right clock said to be so. */
  Opening said(Opening opening) {
    Opening now = opening;
    List<Dated> believed = believed(opening);
    for (Dated one : behind ? believed : own(opening, believed)) {
      if (behind ? one.last().isAfter(opening.now()) : one.last().equals(last)) {
        now = now.with(new Said(one.last(), one.session(), Answer.CLOCK, null, null));
      }
    }
    return now;
  }

  /** When a session began, and when something was last written to it, by the clock of then. */
  private record Dated(String session, Instant began, Instant last) {}

  /** The sessions of which nobody said, since their last event, that its time is wrong. */
  private static List<Dated> believed(Opening opening) {
    List<Said> said =
        Stream.concat(
                opening.records().necks().stream().flatMap(Neck::said), opening.said().stream())
            .filter(one -> one.answer() == Answer.CLOCK)
            .toList();
    List<Dated> believed = new ArrayList<>();
    for (IndexEntry entry : opening.records().entries()) {
      Store.Glance glance = entry.glance();
      Instant began = glance == null ? null : glance.started();
      Instant last = glance == null ? null : glance.last();
      if (entry.session() != null && began != null && last != null) {
        Dated one = new Dated(entry.session(), began, last);
        if (said.stream().noneMatch(s -> s.about().equals(one.session()) && s.at().equals(last))) {
          believed.add(one);
        }
      }
    }
    return believed;
  }

  private static List<Dated> own(Opening opening, List<Dated> all) {
    List<Neck> necks = new ArrayList<>(opening.possible());
    necks.add(opening.neck());
    return all.stream()
        .filter(one -> necks.stream().anyMatch(neck -> neck.has(one.session())))
        .toList();
  }

  private static @Nullable Instant newest(List<Dated> of) {
    return of.stream().map(Dated::last).max(Comparator.naturalOrder()).orElse(null);
  }

  /** Whether no record at all stands in a leap between {@code last} and now. */
  private static boolean leaps(Instant last, List<Dated> believed, Opening opening) {
    Stream<Instant> times = believed.stream().flatMap(one -> Stream.of(one.began(), one.last()));
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
