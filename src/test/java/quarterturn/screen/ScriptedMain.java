package quarterturn.screen;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Clock;
import java.time.Duration;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import org.jline.terminal.Terminal;
import quarterturn.platform.SystemTerminal;
import quarterturn.screen.terminal.Settings;
import quarterturn.screen.terminal.Surface;
import quarterturn.session.Prompt;

/**
 * Runs the face over an invented session, for tests in a pseudo-terminal. Arguments: {@code break}
 * lets another thread fail once a file named break stands beside the one of the property {@code
 * left}; {@code plain} draws without colour; {@code ascii} without Unicode.
 */
public final class ScriptedMain {
  private static final List<Prompt> STEPS =
      List.of(
          Invented.CAUTION,
          Invented.TELL,
          Invented.CHOOSE,
          Invented.KEY,
          Invented.MEASURE,
          Invented.CURVE,
          Invented.LOOSEN,
          Invented.settle(true),
          Invented.TIGHTEN,
          Invented.HUMIDITY);

  private ScriptedMain() {}

  public static void main(String[] args) throws Exception {
    List<String> wanted = List.of(args);
    List<Prompt> prompts = new ArrayList<>(wanted.contains("short") ? List.of() : STEPS);
    prompts.add(wanted.contains("hand-over") ? Invented.HAND_OVER : Invented.DONE);
    Clock clock =
        Clock.offset(
            Clock.systemUTC(), Duration.between(Clock.systemUTC().instant(), Invented.NOON));
    ScriptedBench bench = new ScriptedBench(clock, prompts, ScriptedMain::noteLeaving);
    Settings settings = new Settings(!wanted.contains("plain"), !wanted.contains("ascii"));
    if (wanted.contains("break")) {
      breakWhenTold();
    }
    try (Terminal terminal = SystemTerminal.open()) {
      ScreenFace.Outcome outcome;
      try (Surface surface = Surface.open(terminal, settings)) {
        outcome = ScreenFace.run(surface, bench, ZoneOffset.UTC, "", false);
      }
      ScreenFace.say(terminal, outcome.farewell());
      int status = outcome.status();
      System.out.println("left in order " + bench.timesLeft() + ", status " + status);
      System.out.flush();
      System.exit(status);
    }
  }

  private static void noteLeaving() {
    String file = System.getProperty("left");
    if (file != null) {
      try {
        Files.writeString(
            Path.of(file), "left\n", StandardOpenOption.CREATE, StandardOpenOption.APPEND);
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
  }

  private static void breakWhenTold() {
    Path sign = Path.of(System.getProperty("left")).resolveSibling("break");
    Thread thread =
        new Thread(
            () -> {
              try {
                while (!Files.exists(sign)) {
                  Thread.sleep(20);
                }
              } catch (InterruptedException enough) {
                return;
              }
              throw new IllegalStateException("invented failure");
            });
    thread.setDaemon(true);
    thread.start();
  }
}
