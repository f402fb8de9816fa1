package quarterturn.command;

import static com.google.common.truth.Truth.assertThat;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.parallel.Isolated;

/** A bench that waits for the teacher while nobody is left who types at it. */
@Isolated("Standard input and output are the process's.")
class HoldAtEndOfInputTest {
  private static final Duration SOON = Duration.ofSeconds(20);

  @TempDir Path folder;

  @BeforeEach
  void plan() {
    ran("", "lesson", "new", lesson(), "--procedure=relief-check", "--hold=low", "--neck=too-much");
  }

  private String lesson() {
    return folder.resolve("lesson").toString();
  }

  private Captured ran(String input, String... words) {
    Captured ran = Captured.of(Clock.systemUTC(), input, Captured.at(folder, words));
    assertThat(ran.err()).isEmpty();
    assertThat(ran.status()).isEqualTo(0);
    return ran;
  }

  private Captured joined(String face, String input) {
    return assertTimeoutPreemptively(
        SOON, () -> ran(input, "lesson", "join", lesson(), "--bench=left", "--as=Ana", face));
  }

  @Test
  void typedItIsLeft() {
    Captured ran = joined("--plain", "\nu\n\ndone\n0.4 it looks so\n");
    assertThat(ran.out()).contains("HOLD POINT");
    assertThat(ran.out()).contains("Left:");
  }

  @Test
  void inJsonLinesItIsLeft() {
    String yes = "{\"answer\":true}\n";
    String prediction = "{\"answer\":\"0.4 it looks so\"}\n";
    Captured ran = joined("--lines", yes + yes + yes + "{\"answer\":\"waited\"}\n" + prediction);
    assertThat(ran.out()).contains("\"hold\"");
    assertThat(ran.out()).contains("{\"left\":");
  }
}
