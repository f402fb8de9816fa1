package quarterturn.session.clock;

import static com.google.common.truth.Truth.assertThat;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import org.junit.jupiter.api.Test;
import quarterturn.procedure.Limits;

/** A machine's clock that is set while a session is open; both figures are invented. */
class SessionClockTest {
  private static final Limits.Clocks LIMITS =
      new Limits.Clocks(Duration.ofMinutes(10), Duration.ofDays(300));

  private final Set machine = new Set();
  private final SessionClock clock = new SessionClock(machine, LIMITS, null);

  /** A clock that tells what it is set to. */
  private static final class Set extends Clock {
    private Instant now = Instant.parse("2027-03-01T12:00:00Z");

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
      return this;
    }
  }

  private Instant at(String machineSays) {
    machine.now = Instant.parse(machineSays);
    return clock.now();
  }

  @Test
  void itGoesWithTheMachineThroughANightAndAHoliday() {
    assertThat(at("2027-03-01T12:00:00.9Z").toString()).isEqualTo("2027-03-01T12:00:00Z");
    assertThat(at("2027-03-02T08:00:00Z").toString()).isEqualTo("2027-03-02T08:00:00Z");
    assertThat(at("2027-09-01T08:00:00Z").toString()).isEqualTo("2027-09-01T08:00:00Z");
  }

  @Test
  void setBackItGoesOnFromWhereItWas() {
    at("2027-03-01T12:00:00Z");
    for (String back : new String[] {"2027-03-01T11:59:59Z", "2027-03-01T11:00:00Z"}) {
      assertThat(at(back).toString()).isEqualTo("2027-03-01T12:00:00Z");
    }
    assertThat(at("1970-01-01T00:00:00Z").toString()).isEqualTo("2027-03-01T12:00:00Z");
    // Five minutes later by the machine, a wait of five minutes is over.
    assertThat(at("1970-01-01T00:05:00Z").toString()).isEqualTo("2027-03-01T12:05:00Z");
  }

  @Test
  void aLeapOfYearsIsNoTimeThatWentBy() {
    at("2027-03-01T12:00:00Z");
    assertThat(at("2099-01-01T00:00:00Z").toString()).isEqualTo("2027-03-01T12:00:00Z");
    assertThat(at("2099-01-01T00:05:00Z").toString()).isEqualTo("2027-03-01T12:05:00Z");
    // And right again.
    assertThat(at("2027-03-01T12:06:00Z").toString()).isEqualTo("2027-03-01T12:05:00Z");
    assertThat(at("2027-03-01T12:07:00Z").toString()).isEqualTo("2027-03-01T12:06:00Z");
  }
}
