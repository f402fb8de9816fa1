package quarterturn.lesson.teacher;

import java.time.Duration;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * When a desk last heard of a bench, by a clock of its own that nobody sets.
 *
 * @param ago how long ago; since the desk was opened where it has not heard of it
 * @param ever whether it has heard of it
 * @param clock what the bench's own clock showed in its last sign of life, or null
 */
public record Heard(Duration ago, boolean ever, @Nullable Instant clock) {
  /** Three signs of life that did not come. */
  private static final Duration LONG = Duration.ofSeconds(30);

  /** Whether that is long ago. */
  public boolean silent() {
    return ago.compareTo(LONG) > 0;
  }
}
