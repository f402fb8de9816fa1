package quarterturn.command;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.parallel.Isolated;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** An option before a command means what it means behind it. */
@Tag("slow")
@Isolated
class CommandFirstTest {
  private static final Clock CLOCK =
      Clock.fixed(Instant.parse("2024-06-01T10:00:00Z"), ZoneOffset.UTC);

  @TempDir Path folder;
  private final String home = System.getProperty("user.home");

  /** What is kept in the wrong place is at least not kept in the home of who runs the test. */
  @BeforeEach
  void keepAnInstrument() throws IOException {
    System.setProperty("user.home", folder.resolve("home").toString());
    Path own = Files.createDirectories(folder.resolve("own/procedures"));
    Files.copy(Path.of("procedures/season.yaml"), own.resolve("own-season.yaml"));
    run("instrument add my-bass --kind bass-34 --data DATA");
  }

  @AfterEach
  void giveHomeBack() {
    System.setProperty("user.home", home);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          --data DATA           | instrument list        |                     | my-bass
          --data=DATA           | instrument show        | my-bass             | Bass, 34 inch
          --data DATA --own OWN | instrument show        | my-bass             | Bass, 34 inch
          --data DATA           | log list               |                     | session
          --own OWN             | check                  |                     | own-season
          --own NONE            | start                  | relief              | there is no folder
          --lines               | lesson join            | nosuch              | bench's name is given
          --plain --lines       | start                  | relief              | mutually exclusive
          --color sometimes     | resume                 |                     | sometimes
          --data DATA           | start                  | relief --data DATA  | only once
          --plain               | due                    |                     | there is no option
          --data DATA           | instrument             |                     | there is no option
          --color never         | reckon                 | pull                | there is no option
          """)
  void inBothPlacesItDoesTheSame(String options, String command, String rest, String shown) {
    String behind = rest == null ? "" : rest;
    Captured before = run(options + " " + command + " " + behind);
    assertThat(before).isEqualTo(run(command + " " + options + " " + behind));
    assertThat(before.out() + before.err()).contains(shown);
  }

  @Test
  void aSessionIsKeptWhereTheOptionSays() {
    run("--data DATA instrument edit my-bass --style hard");
    assertThat(run("instrument show my-bass --data DATA").out()).contains("hard");
    run("--lines --data DATA start relief --instrument my-bass");
    assertThat(run("log list --data DATA").out()).contains("relief");
    assertThat(Files.exists(folder.resolve("home"))).isFalse();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          --help due             | Usage: quarterturn [-hV]
          --data DATA --help due | Usage: quarterturn [-hV]
          --data DATA --version  | quarterturn unpackaged
          start --version        | settings:
          reckon frets --version | data:
          --data DATA nosuch     | is none of start
          --lines --data DATA    | "listed":[{"name":"start"
          --nosuch due           | there is no option
          """)
  void whatComesBeforeNoCommandStays(String typed, String shown) {
    Captured ran = run(typed);
    assertWithMessage(typed).that(ran.out() + ran.err()).contains(shown);
  }

  private Captured run(String typed) {
    List<String> args =
        Stream.of(typed.split(" ", -1))
            .filter(word -> !word.isEmpty())
            .map(word -> word.replace("DATA", folder.resolve("data").toString()))
            .map(word -> word.replace("OWN", folder.resolve("own").toString()))
            .map(word -> word.replace("NONE", folder.resolve("none").toString()))
            .toList();
    return Captured.of(CLOCK, "", args.toArray(String[]::new));
  }
}
