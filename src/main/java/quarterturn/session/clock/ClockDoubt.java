package quarterturn.session.clock;

import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Limits;
import quarterturn.session.Carried.Answer;
import quarterturn.session.Carried.Said;
import quarterturn.session.Event;

/**
 * A time by which the clock or a record must be wrong, so that nobody knows how long ago something
 * was.
 *
 * @param last the time on record
 * @param behind whether the clock stands before it; else it stands so long after it that a wait or
 *     the day's turning would be over by an unlikely leap
 * @param of the records that would have been written by a wrong clock
 */
public record ClockDoubt(Instant last, boolean behind, List<Dated> of) {
  public ClockDoubt {
    of = List.copyOf(of);
  }

  /** When a session began, and when something was last written to it, by the clock of then. */
  public record Dated(String session, Instant began, Instant last) {
    /** Whether it was said, since something was last written, that the time is wrong. */
    public boolean disowned(List<Said> said) {
      return said.stream()
          .anyMatch(
              s -> s.answer() == Answer.CLOCK && s.about().equals(session) && s.at().equals(last));
    }
  }

  /**
   * What there is to be asked, or null.
   *
   * @param all every session whose times are believed so far
   * @param own those of them that may be of the neck
   * @param matters whether it matters that the clock is behind
   * @param ends whether something would be over that was not at a time
   */
  public static @Nullable ClockDoubt of(
      List<Dated> all,
      List<Dated> own,
      Instant now,
      Limits.Clocks clocks,
      boolean matters,
      Predicate<Instant> ends) {
    Instant newest = newest(all);
    if (matters && newest != null && clocks.back(newest, now)) {
      List<Dated> later = all.stream().filter(one -> one.last().isAfter(now)).toList();
      return new ClockDoubt(newest, true, later);
    }
    Instant last = newest(own);
    return last != null && leaps(last, all, now, clocks) && ends.test(last)
        ? new ClockDoubt(last, false, own.stream().filter(one -> one.last().equals(last)).toList())
        : null;
  }

  /** What is said where not the clock is wrong, but these records are. */
  public List<Said> said() {
    return of.stream()
        .map(one -> new Said(one.last(), one.session(), Answer.CLOCK, null, null))
        .toList();
  }

  private static @Nullable Instant newest(List<Dated> of) {
    return of.stream().map(Dated::last).max(Comparator.naturalOrder()).orElse(null);
  }

  /** Whether no record at all stands in a leap between {@code last} and now. */
  private static boolean leaps(Instant last, List<Dated> all, Instant now, Limits.Clocks clocks) {
    Stream<Instant> times = all.stream().flatMap(one -> Stream.of(one.began(), one.last()));
    List<Instant> since =
        Stream.concat(times, Stream.of(last, now))
            .filter(at -> !at.isBefore(last) && !at.isAfter(now))
            .sorted()
            .toList();
    for (int i = 1; i < since.size(); i++) {
      if (clocks.leaps(since.get(i - 1), since.get(i))) {
        return true;
      }
    }
    return false;
  }

  /** Whether a session was left in a wait that was not over at a time. */
  public static boolean waits(List<Event> events, Instant at) {
    boolean waits = false;
    for (Event event : events) {
      if (event instanceof Event.WaitBegan began) {
        waits = began.until().isAfter(at);
      } else if (event instanceof Event.Waited) {
        waits = false;
      }
    }
    return waits;
  }
}
