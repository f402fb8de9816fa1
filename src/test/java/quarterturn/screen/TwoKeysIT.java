package quarterturn.screen;

import static com.google.common.truth.Truth.assertThat;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quarterturn.command.Captured;
import quarterturn.jar.Packaged;

/**
 * From one instrument to the next at a terminal: q leaves for home, Enter goes on with the next.
 */
class TwoKeysIT {
  @TempDir Path data;

  private List<String> words(String... typed) {
    List<String> words = new ArrayList<>(List.of(typed));
    words.add("--data=" + data);
    return words;
  }

  private void run(Instant at, String... typed) {
    Clock then = Clock.fixed(at, ZoneOffset.UTC);
    Captured ran = Captured.of(then, "", words(typed).toArray(String[]::new));
    assertThat(ran.status()).isEqualTo(0);
  }

  /** Each is left at its first prompt, since the input ends there. */
  @BeforeEach
  void threeAreBegun() {
    Instant at = Instant.now().minusSeconds(60);
    for (String name : List.of("blue", "green", "red")) {
      run(at, "instrument", "add", name, "--kind=bass-34", "--style=medium", "--ticket=T-" + name);
      run(at, "start", "relief", "--instrument", name, "--lines");
      at = at.plusSeconds(10);
    }
  }

  /** Events are kept to the second, and who was left longest ago comes first. */
  private static void later() throws InterruptedException {
    Thread.sleep(1100);
  }

  private PtyScreen home() throws Exception {
    String[] program = Packaged.program(words()).toArray(String[]::new);
    return PtyScreen.start(80, 24, Map.of(), program);
  }

  @Test
  void theyLeadFromEachToTheNext() throws Exception {
    try (PtyScreen screen = home()) {
      screen.waitFor("1  Neck relief on blue, ticket T-blue").keys("\r");
      screen.waitFor("Welcome back").waitFor("  blue  ");
      later();
      screen.keys("q");
      screen.waitFor("1  Neck relief on green, ticket T-green").keys("\r");
      screen.waitFor("Welcome back").waitFor("  green  ");
      later();
      screen.keys("q");
      screen.waitFor("1  Neck relief on red, ticket T-red").keys("\r");
      screen.waitFor("Welcome back").waitFor("  red  ");
      later();
      screen.keys("q");
      screen.waitFor("1  Neck relief on blue, ticket T-blue").keys("q");
      assertThat(screen.exitStatus()).isEqualTo(0);
    }
  }

  /** Nothing of a rehearsal is kept, so it asks as ever. */
  @Test
  void aRehearsalIsNotLeftUnasked() throws Exception {
    try (PtyScreen screen = home()) {
      screen.waitFor("To go on with").keys("12\r");
      screen.waitFor("Rehearsal: ").keys("q");
      screen.waitFor("Leave now?").keys("y");
      screen.waitFor("To go on with").keys("q");
      assertThat(screen.exitStatus()).isEqualTo(0);
    }
  }
}
