package quarterturn.lesson;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import quarterturn.procedure.Limits;

/**
 * How long an entry at a bench takes: a step of the procedure, or what a student adds to it.
 *
 * @param step reading it, talking about it and doing it
 * @param answer one student's row, or a page that is read together
 * @param benches how many finished benches it was measured at; 0 where it is estimated
 */
public record Pace(Duration step, Duration answer, int benches) {
  /** An estimate, no source: a minute a step, as simulated hands take, and 20 s an answer. */
  public static final Pace ESTIMATED = new Pace(Duration.ofMinutes(1), Duration.ofSeconds(20), 0);

  /**
   * The pace of benches that have finished a lesson, by their own clocks; as estimated where there
   * is none. The time between leaving a bench and joining it again does not count.
   *
   * @param benches the events of each, oldest first
   * @param clocks how far a clock may be off before it is not believed
   */
  public static Pace measured(List<List<LessonEvent>> benches, Limits.Clocks clocks) {
    Duration estimated = Duration.ZERO;
    Duration spent = Duration.ZERO;
    int finished = 0;
    for (List<LessonEvent> events : benches) {
      if (BenchLesson.of("", Level.WORKED, events).over()) {
        finished++;
        spent = spent.plus(spent(events, clocks));
        for (LessonEvent event : events) {
          estimated = estimated.plus(ESTIMATED.of(event));
        }
      }
    }
    if (spent.isZero() || estimated.isZero()) {
      return ESTIMATED;
    }
    double factor = (double) spent.toMillis() / estimated.toMillis();
    return new Pace(times(ESTIMATED.step, factor), times(ESTIMATED.answer, factor), finished);
  }

  private static Duration times(Duration one, double factor) {
    return Duration.ofMillis(Math.round(one.toMillis() * factor));
  }

  private static Duration spent(List<LessonEvent> events, Limits.Clocks clocks) {
    Duration spent = Duration.ZERO;
    Instant before = null;
    for (LessonEvent event : events) {
      boolean rejoined = event instanceof LessonEvent.Joined;
      // A clock that was set meanwhile tells no time.
      if (before != null
          && !rejoined
          && event.at().isAfter(before)
          && !clocks.leaps(before, event.at())) {
        spent = spent.plus(Duration.between(before, event.at()));
      }
      before = event.at();
    }
    return spent;
  }

  private Duration of(LessonEvent event) {
    boolean answers =
        event instanceof LessonEvent.Predicted
            || event instanceof LessonEvent.Reflected
            || event instanceof LessonEvent.BlindRead
            || event instanceof LessonEvent.AskedAgain;
    return event instanceof LessonEvent.Stepped ? step : answers ? answer : Duration.ZERO;
  }

  /** Where it comes from, in words. */
  public String words() {
    return benches == 0
        ? "estimated, a minute a step and 20 seconds an answer, until a lesson beside it is finished"
        : "as measured at " + benches + (benches == 1 ? " bench" : " benches");
  }
}
