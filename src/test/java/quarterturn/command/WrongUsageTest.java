package quarterturn.command;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;

import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.parallel.Isolated;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is wrong with a command line is said in one line on standard error, with status 2. */
@Tag("slow")
@Isolated
class WrongUsageTest {
  @TempDir Path folder;

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "start relief --lines --kind banjo|there is no kind banjo",
        "start nosuch --lines|there is no procedure \"nosuch\"",
        "start nosuch.yaml --lines|there is no file \"nosuch.yaml\"",
        "start relief --lines --kind bass-34 --style wild|--style: \"wild\" is none of light, medium, hard, slide",
        "start relief --lines --instrument nosuch|there is no instrument nosuch",
        "start relief --lines --plain|mutually exclusive",
        "resume nosuch --lines|there is no session nosuch",
        "resume --lines|there is no unfinished session",
        "log show nosuch|there is no session nosuch",
        "instrument show nosuch|there is no instrument nosuch",
        "instrument add my-bass --kind banjo|there is no kind banjo",
        "instrument add my-bass --style hard|--kind: an instrument needs a kind",
        "instrument add my-bass --kind bass-34 --scale 34|--scale: a scale lies between 300 and 1000",
        "instrument add ../up --kind bass-34|can't name an instrument",
        "instrument edit nosuch|there is no instrument nosuch",
        "instrument history nosuch|there is no instrument nosuch",
        "due --json --ics|mutually exclusive",
        "frobnicate|frobnicate",
        "check nosuch|there is no procedure \"nosuch\"",
        "check nosuch.yaml|there is no file \"nosuch.yaml\"",
        "check --own nosuch|--own: there is no folder nosuch",
        "check --format xml|--format",
        "check relief --format dot|--format dot goes with --draw",
        "check --draw|--draw: name one procedure",
        "check --draw relief setup|--draw: name one procedure",
        "check --draw relief --format json|--draw goes with --format text or dot",
        "check --draw relief --watch|--draw goes with --format and --inside alone",
        "check relief --inside all|--inside goes with --draw",
        "check --draw relief --inside find-rode|Did you mean",
        "check --draw relief --inside reading|has no part or block \"reading\"",
        "check --draw nosuch|there is no procedure \"nosuch\"",
        "check --schema relief|--schema goes with nothing else",
        "check --schema --format json|--schema goes with nothing else",
        "check --cover|--cover: name one procedure",
        "check --cover relief setup|--cover: name one procedure",
        "check --watch|--watch: name a .yaml file or a folder",
        "check relief --watch|--watch: name a .yaml file or a folder",
        "check x.yaml --watch --format json|--watch goes with --format text alone"
      })
  void wrongUsageIsOneClearLine(String typed, String says) {
    List<String> args = new ArrayList<>(List.of(typed.split(" ", -1)));
    if (!args.get(0).equals("check")) {
      args.addAll(List.of("--data", folder.toString()));
    }
    Captured ran = Captured.of(Clock.systemUTC(), "", args.toArray(String[]::new));
    assertThat(ran.status()).isEqualTo(2);
    assertThat(ran.out()).isEmpty();
    assertWithMessage("one line").that(ran.err().lines().toList()).hasSize(1);
    assertThat(ran.err()).startsWith("quarterturn: ");
    assertThat(ran.err()).contains(says);
    assertWithMessage("nothing is made for it").that(folder.toFile().list()).isEmpty();
  }
}
