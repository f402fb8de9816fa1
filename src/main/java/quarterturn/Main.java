package quarterturn;

import java.time.Clock;
import quarterturn.command.Ahead;
import quarterturn.command.Launch;

/** The door. */
public final class Main {
  private Main() {}

  public static void main(String[] args) {
    Ahead.of(args);
    System.exit(Launch.run(Clock.systemDefaultZone(), args));
  }
}
