package quarterturn.command;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.parallel.Isolated;

/**
 * What the version before sums of turns were kept left on a disk: a session that is done, one in a
 * turn, one in a wait, and a lesson, each played by that version's JSON lines. Instruments are
 * invented.
 */
@Tag("slow")
@Isolated
class EarlierSamplesTest {
  private static final Path SAMPLES = Path.of("src/test/resources/quarterturn/samples/v3");
  private static final Instant NEXT_HOUR = Instant.parse("2026-11-30T16:30:00Z");
  private static final String DONE = "2026-11-30-relief-yy7h";
  private static final String IN_A_TURN = "2026-11-30-relief-n7cp";
  private static final String IN_A_WAIT = "2026-11-30-relief-4eth";

  @TempDir Path folder;

  @BeforeEach
  void copy() throws IOException {
    try (Stream<Path> all = Files.walk(SAMPLES)) {
      for (Path from : all.skip(1).toList()) {
        Files.copy(from, folder.resolve(SAMPLES.relativize(from).toString()));
      }
    }
  }

  private String run(String in, String... args) {
    Captured ran = Captured.of(Clock.fixed(NEXT_HOUR, ZoneOffset.UTC), in, args);
    assertWithMessage(String.join(" ", args) + ran.err()).that(ran.status()).isEqualTo(0);
    return ran.out();
  }

  private String data() {
    return "--data=" + folder.resolve("data");
  }

  @Test
  void allOfItIsSoundAndListed() {
    assertThat(run("", "data", "check", data()))
        .isEqualTo("Read 3 sessions and 3 instruments: nothing is wrong.\n");
    String list = run("", "log", "list", data());
    assertThat(list).containsMatch(DONE + ".* blue .* ended: in range");
    assertThat(list).containsMatch(IN_A_TURN + ".* red .* open: in the middle of a rod turn");
    assertThat(list).containsMatch(IN_A_WAIT + ".* green .* open: rod turned, settled, ready");
    assertThat(run("", "instrument", "history", "blue", data())).contains(DONE);
    assertThat(run("", "log", "export", DONE, data())).contains("Done by");
  }

  @Test
  void eachGoesOnWhereItWasLeft() {
    assertThat(run("quit\n", "resume", IN_A_TURN, "--plain", data()))
        .contains("A turn had been asked for. The next question is whether it was made.");
    assertThat(run("quit\n", "resume", IN_A_WAIT, "--plain", data())).contains("Welcome back");
  }

  @Test
  void itsTurnsCountInTheNextSession() {
    String net = run("", "instrument", "history", "blue", "--json", data());
    assertThat(net).contains("\"turned\":");
    run("quit\n", "start", "relief", "--instrument", "blue", "--plain", data());
    String log = run("", "log", "list", data());
    String next = log.lines().skip(1).findFirst().orElse("").split(" ")[0];
    assertThat(run("", "log", "show", next, data())).contains("Earlier:   2026-11-30");
  }

  @Test
  void theLessonIsShownAndItsBenchGoesOn() {
    String lesson = folder.resolve("lesson").toString();
    assertThat(run("leave\n", "lesson", "desk", lesson, "--plain")).contains("Ana");
    assertThat(run("quit\n", "lesson", "join", lesson, "--bench", "left", "--plain"))
        .contains("Bench left goes on where it was with Ana.");
  }
}
