package quarterturn.report.sheet;

import java.time.Duration;
import java.time.Instant;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import quarterturn.session.Event;

/** Who was at the bench in a session, and for how long. */
final class BenchTime {
  private BenchTime() {}

  /** Everybody who was named as working, in order, or null where nobody was. */
  static @Nullable String by(List<Event> events) {
    Set<String> names = new LinkedHashSet<>();
    for (Event event : events) {
      String by =
          event instanceof Event.Started started
              ? started.by()
              : event instanceof Event.Resumed resumed ? resumed.by() : null;
      if (by != null) {
        names.add(by);
      }
    }
    return names.isEmpty() ? null : String.join(", ", names);
  }

  /**
   * The time from the first answer to the last, without the waits and without the breaks, which
   * begin with the last event before the session was taken up again. Answers that were withdrawn
   * took their time too. Null where there is no answer.
   *
   * @param events all of them, oldest first
   */
  static @Nullable Duration of(List<Event> events) {
    Duration sum = Duration.ZERO;
    Duration sinceAnswer = Duration.ZERO;
    Instant last = null;
    boolean waiting = false;
    for (Event event : events) {
      boolean answer = event.withdrawable() || event instanceof Event.Corrected;
      if (last != null && !waiting && !(event instanceof Event.Resumed)) {
        sinceAnswer = sinceAnswer.plus(Duration.between(last, event.at()));
      }
      if (answer) {
        sum = last == null ? sum : sum.plus(sinceAnswer);
        sinceAnswer = Duration.ZERO;
      }
      waiting = event instanceof Event.WaitBegan || (waiting && !answer);
      last = last != null || answer ? event.at() : null;
    }
    return last == null ? null : sum;
  }
}
