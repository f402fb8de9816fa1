package quarterturn.rehearsal.life;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;

/** A machine's clock, which may be wrong by some time. */
final class MachineClock extends Clock {
  private Instant truth;
  private Duration wrong = Duration.ZERO;

  MachineClock(Instant truth) {
    this.truth = truth;
  }

  /** Lets time pass until then, by the true time. */
  void go(Instant then) {
    truth = then.isAfter(truth) ? then : truth;
  }

  Instant truth() {
    return truth;
  }

  /** Sets the clock wrong by some time from now on. */
  void set(Duration off) {
    wrong = off;
  }

  /** The true time at which it tells {@code shown}. */
  Instant truthAt(Instant shown) {
    return shown.minus(wrong);
  }

  @Override
  public Instant instant() {
    return truth.plus(wrong);
  }

  @Override
  public ZoneId getZone() {
    return ZoneOffset.UTC;
  }

  @Override
  public Clock withZone(ZoneId zone) {
    throw new UnsupportedOperationException("a simulated clock has one zone");
  }
}
