package quarterturn.command;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The program on a clock that runs many times faster, so that a test need not wait for wood. */
public final class FastMain {
  private static final Pattern AT = Pattern.compile("\"at\":\"([0-9T:.Z-]+)\"");

  private FastMain() {}

  /**
   * @param args how many times faster, then the command line
   */
  public static void main(String[] args) {
    long factor = Long.parseLong(args[0]);
    Clock real = Clock.systemDefaultZone();
    Duration ahead = ahead(String.join(" ", args).replaceAll("(?s).*--data[ =](\\S+).*|.*", "$1"));
    Clock fast = new Fast(Clock.offset(real, ahead), Instant.now().plus(ahead), factor);
    System.exit(Launch.run(fast, Arrays.copyOfRange(args, 1, args.length)));
  }

  /** How far the clock of the last run in a data folder got ahead, so that none goes back. */
  private static Duration ahead(String data) {
    Duration ahead = Duration.ZERO;
    File[] sessions = data.isEmpty() ? null : new File(data, "sessions").listFiles();
    for (File file : sessions == null ? new File[0] : sessions) {
      try {
        Matcher at = AT.matcher(Files.readString(file.toPath()));
        while (at.find()) {
          Duration one = Duration.between(Instant.now(), Instant.parse(at.group(1)));
          ahead = one.compareTo(ahead) > 0 ? one : ahead;
        }
      } catch (IOException e) {
        // Not a file, or being written.
      }
    }
    return ahead;
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
