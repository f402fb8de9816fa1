package quarterturn.line;

import java.time.Duration;
import java.time.Instant;
import quarterturn.session.Prompt;
import quarterturn.unit.Dates;

/** The words printed while a wait passes. */
final class WaitWords {
  private WaitWords() {}

  /** How long a wait still lasts. */
  static String left(Prompt.Wait wait, Instant now) {
    Duration left = Duration.between(now, wait.until());
    return left.compareTo(Duration.ZERO) > 0
        ? "Time left: " + Dates.lasting(left) + "."
        : "The time has passed.";
  }

  /** How long to stay silent before the next line: a minute, and longer on long waits. */
  static Duration silence(Duration left) {
    long minutes = left.toMinutes();
    long every = minutes > 120 ? 60 : minutes > 20 ? 10 : 1;
    Duration silence = Duration.ofMinutes(every);
    return left.compareTo(silence) < 0 ? left : silence;
  }
}
