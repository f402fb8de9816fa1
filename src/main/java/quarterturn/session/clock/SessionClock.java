package quarterturn.session.clock;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Limits;

/**
 * The time in a session while it is open. Where the machine's clock is set back, or leaps further
 * than anybody stays away, this one goes on from where it was; the next time that the session is
 * opened, the machine's time counts again.
 */
public final class SessionClock {
  private final Clock machine;
  private final Limits.Clocks limits;
  private Duration ahead = Duration.ZERO;
  private @Nullable Instant shown;

  /**
   * A clock that goes with the machine's.
   *
   * @param shown what it shows at least, or null where any time may come first
   */
  public SessionClock(Clock machine, Limits.Clocks limits, @Nullable Instant shown) {
    this.machine = machine;
    this.limits = limits;
    this.shown = shown;
  }

  /** The time now. */
  public synchronized Instant now() {
    // Whole seconds: no one at a bench needs more, and a wait ends when the clock says so.
    Instant now = machine.instant().plus(ahead).truncatedTo(ChronoUnit.SECONDS);
    Instant before = shown;
    if (before != null && (now.isBefore(before) || limits.leaps(before, now))) {
      ahead = ahead.plus(Duration.between(now, before));
      now = before;
    }
    shown = now;
    return now;
  }

  /** Sets it, to go on from there. */
  public synchronized void set(Instant at) {
    ahead = Duration.between(machine.instant(), at);
    shown = at;
  }
}
