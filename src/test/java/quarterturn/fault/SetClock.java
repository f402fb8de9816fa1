package quarterturn.fault;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;

/** A clock that stands until it is set. */
final class SetClock extends Clock {
  private Instant now;

  SetClock(Instant now) {
    this.now = now;
  }

  void set(Instant to) {
    now = to;
  }

  @Override
  public Instant instant() {
    return now;
  }

  @Override
  public ZoneId getZone() {
    return ZoneOffset.UTC;
  }

  @Override
  public Clock withZone(ZoneId zone) {
    throw new UnsupportedOperationException("this one is at the meridian");
  }
}
