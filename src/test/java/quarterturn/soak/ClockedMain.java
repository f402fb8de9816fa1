package quarterturn.soak;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Arrays;
import quarterturn.command.Launch;

/** The program on a clock that begins when it is told and runs faster, so that days pass by. */
public final class ClockedMain {
  private ClockedMain() {}

  /**
   * @param args when the clock begins, how many times faster it runs, then the command line
   */
  public static void main(String[] args) {
    Clock clock =
        new Running(Instant.parse(args[0]), Instant.now(), Long.parseLong(args[1]), ZoneOffset.UTC);
    System.exit(Launch.run(clock, Arrays.copyOfRange(args, 2, args.length)));
  }

  private static final class Running extends Clock {
    private final Instant begins;
    private final Instant started;
    private final long factor;
    private final ZoneId zone;

    Running(Instant begins, Instant started, long factor, ZoneId zone) {
      this.begins = begins;
      this.started = started;
      this.factor = factor;
      this.zone = zone;
    }

    @Override
    public ZoneId getZone() {
      return zone;
    }

    @Override
    public Clock withZone(ZoneId other) {
      return new Running(begins, started, factor, other);
    }

    @Override
    public Instant instant() {
      return begins.plus(Duration.between(started, Instant.now()).multipliedBy(factor));
    }
  }
}
