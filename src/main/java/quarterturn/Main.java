package quarterturn;

import java.time.Clock;
import quarterturn.command.Cli;

/** The door. */
public final class Main {
  private Main() {}

  public static void main(String[] args) {
    System.exit(Cli.run(Clock.systemDefaultZone(), args));
  }
}
