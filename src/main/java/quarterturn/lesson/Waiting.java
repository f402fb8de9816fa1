package quarterturn.lesson;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a bench waits for, for whom and how long.
 *
 * @param what in words for the teacher
 * @param who the students that are waited for
 * @param since by the bench's own clock, or null where it works
 * @param howLong up to the last that was heard of it, by the same clock
 */
public record Waiting(
    Kind kind, String what, List<String> who, @Nullable Instant since, Duration howLong) {
  /** The kinds of waiting, in the order a teacher deals with them. */
  public enum Kind {
    STOPPED,
    HELD,
    PREDICTING,
    READING,
    THINKING,
    WORKING,
    OVER
  }

  /**
   * What a bench waits for.
   *
   * @param heard what its own clock showed when it was last heard of, or null
   */
  public static Waiting of(BenchLesson lesson, @Nullable Instant heard) {
    Instant last = lesson.last();
    boolean later = heard != null && (last == null || heard.isAfter(last));
    return of(later ? lesson.heard(heard) : lesson);
  }

  private static Waiting of(BenchLesson lesson) {
    if (lesson.over()) {
      return of(lesson, Kind.OVER, "the lesson is over here", List.of(), null);
    }
    if (!lesson.keptBy().isEmpty()) {
      Keep keep = lesson.keptBy().get(0);
      boolean stop = keep.kind() == Keep.Kind.STOP;
      String reason = keep.what().isEmpty() ? "no reason given" : keep.what();
      String what = stop ? "stopped: " + reason : reason;
      return of(lesson, stop ? Kind.STOPPED : Kind.HELD, what, List.of(), keep.since());
    }
    if (lesson.left() != null) {
      String what = lesson.left().finished() ? "done" : "done for now, left in order";
      return of(lesson, Kind.OVER, what, List.of(), null);
    }
    Round thinking = lesson.reflecting();
    if (thinking != null) {
      List<String> who = thinking.toReflect(lesson.students());
      return of(lesson, Kind.THINKING, "reasons", who, thinking.resulted());
    }
    Round round = lesson.lastRound();
    return round == null ? working(lesson) : in(lesson, round);
  }

  private static Waiting in(BenchLesson lesson, Round round) {
    boolean here = round.opened().spot().equals(lesson.spot());
    if (round.shown() == null) {
      List<String> who = round.toPredict(lesson.students());
      return here && !who.isEmpty()
          ? of(lesson, Kind.PREDICTING, "predictions", who, round.opened().at())
          : working(lesson);
    }
    // What a turn did is read later than it was predicted.
    boolean reads = here || !round.blind().isEmpty();
    if (round.opened().blind() && round.unveiled() == null && reads) {
      return of(lesson, Kind.READING, "readings", round.toRead(lesson.students()), round.shown());
    }
    return working(lesson);
  }

  private static Waiting working(BenchLesson lesson) {
    return of(lesson, Kind.WORKING, "nothing", List.of(), null);
  }

  private static Waiting of(
      BenchLesson lesson, Kind kind, String what, List<String> who, @Nullable Instant since) {
    Instant last = lesson.last();
    // A clock that was set back makes no time negative.
    boolean told = since != null && last != null && last.isAfter(since);
    Duration howLong = told && since != null ? Duration.between(since, last) : Duration.ZERO;
    return new Waiting(kind, what, who, since, howLong);
  }
}
