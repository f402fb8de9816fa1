package quarterturn.command;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.Arrays;

/** The program on a clock that runs many times faster, so that a test need not wait for wood. */
public final class FastMain {
  private FastMain() {}

  /**
   * @param args how many times faster, then the command line
   */
  public static void main(String[] args) {
    long factor = Long.parseLong(args[0]);
    Clock fast = new Fast(Clock.systemDefaultZone(), Instant.now(), factor);
    System.exit(Cli.run(fast, Arrays.copyOfRange(args, 1, args.length)));
  }

  private static final class Fast extends Clock {
    private final Clock real;
    private final Instant began;
    private final long factor;

    Fast(Clock real, Instant began, long factor) {
      this.real = real;
      this.began = began;
      this.factor = factor;
    }

    @Override
    public ZoneId getZone() {
      return real.getZone();
    }

    @Override
    public Clock withZone(ZoneId zone) {
      return new Fast(real.withZone(zone), began, factor);
    }

    @Override
    public Instant instant() {
      return began.plus(Duration.between(began, real.instant()).multipliedBy(factor));
    }
  }
}
