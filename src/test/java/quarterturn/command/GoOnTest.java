package quarterturn.command;

import static com.google.common.truth.Truth.assertThat;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.parallel.Isolated;

/** Who begins on an instrument with work that is not over is asked whether to go on with that. */
@Isolated
class GoOnTest {
  private static final Clock CLOCK =
      Clock.fixed(Instant.parse("2027-03-02T09:30:00Z"), ZoneOffset.UTC);
  private static final Pattern SESSION = Pattern.compile("(?m)^Session (\\S+)\\.");

  @TempDir Path folder;
  private String first = "";

  @BeforeEach
  void workThatIsNotOver() {
    run("", "instrument", "add", "blue", "--kind", "bass-34");
    first = session(run("medium\n", "start", "relief", "--instrument", "blue", "--plain"));
  }

  private Captured run(String in, String... args) {
    return Captured.of(CLOCK, in, Captured.at(folder, args));
  }

  private static String session(Captured run) {
    Matcher found = SESSION.matcher(run.out());
    assertThat(found.find()).isTrue();
    return found.group(1);
  }

  @Test
  void itGoesOn() {
    Captured again = run("1\n", "start", "action", "--instrument", "blue", "--plain");
    assertThat(again.out()).contains("blue has work that is not over. Go on with it?");
    assertThat(again.out())
        .contains("1. Go on: Neck relief on blue: strings as found (" + first + ")");
    assertThat(session(again)).isEqualTo(first);
  }

  @Test
  void orAnotherBegins() {
    Captured another = run("another\n", "start", "relief", "--instrument", "blue", "--plain");
    assertThat(session(another)).isNotEqualTo(first);
  }

  @Test
  void whoLeavesThereBeginsNothing() {
    run("quit\n", "start", "relief", "--instrument", "blue", "--plain");
    assertThat(run("", "log", "list").out().lines().count()).isEqualTo(2);
  }

  @Test
  void workOnAnotherInstrumentIsNotAskedAbout() {
    run("", "instrument", "add", "red", "--kind", "bass-34");
    Captured begun = run("medium\n", "start", "relief", "--instrument", "red", "--plain");
    assertThat(begun.out()).doesNotContain("not over");
    assertThat(session(begun)).isNotEqualTo(first);
  }
}
