package quarterturn.image;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quarterturn.command.CommandTree;

/** What shells complete, and what the manual tells, is what the program takes. */
class CompletionTest {
  private static final CommandTree PROGRAM = program();
  private static final Path BASH = Path.of("/bin/bash");

  @TempDir Path folder;

  private static CommandTree program() {
    try {
      return CommandTree.ofProgram();
    } catch (Exception e) {
      throw new AssertionError(e);
    }
  }

  @Test
  void everyCommandAndOptionIsInAllOfThem() {
    List<CommandTree> all = PROGRAM.all();
    assertThat(all.size()).isAtLeast(40);
    String manual = ManPage.of(PROGRAM, "1.2.3", "2027-03-01").replace("\\", "");
    for (String text :
        List.of(
            BashCompletion.of(PROGRAM),
            ZshCompletion.of(PROGRAM),
            FishCompletion.of(PROGRAM).replace(" -l ", " --"),
            manual)) {
      for (CommandTree one : all) {
        assertWithMessage(text).that(one.path().isEmpty() || text.contains(one.name())).isTrue();
        for (CommandTree.Word option : one.options()) {
          for (String name : option.names()) {
            boolean brief = !name.startsWith("--");
            assertWithMessage(name).that(brief || text.contains(name)).isTrue();
          }
        }
      }
    }
  }

  @Test
  void theManualHasAPageOfEachSort() {
    String manual = ManPage.of(PROGRAM, "1.2.3", "2027-03-01");
    assertThat(manual).startsWith(".TH QUARTERTURN 1 \"2027-03-01\" \"quarterturn 1.2.3\"\n");
    assertThat(manual)
        .contains(
            ".SH NAME\n"
                + "quarterturn \\- Carries you through setting up a fretted string instrument");
    assertThat(manual).contains("\n.SS lesson new\n");
    assertThat(manual).contains("\n.SS reckon frets\n");
    assertThat(manual.lines().filter(line -> line.startsWith("'")).toList()).isEmpty();
  }

  /** As a shell asks that has the words typed so far, the last of them to be completed. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          re                    | resume reckon rehearse
          lesson n              | new
          start --sty           | --style
          start --style m       | medium
          start --style= l      | light
          start rel             | relief relief-check
          start --kind bass-34  | bass-34
          --role t              | technician
          reckon fr             | frets
          start --by A          |
          """)
  void bashOffersWhatMayFollow(String typed, String offered) throws Exception {
    assumeTrue(Files.isExecutable(BASH));
    Path script = Files.writeString(folder.resolve("completion"), BashCompletion.of(PROGRAM));
    Path ask =
        Files.writeString(
            folder.resolve("ask"),
            """
            compopt() { :; }
            source "$1"; shift
            COMP_WORDS=(quarterturn "$@"); COMP_CWORD=$#
            _quarterturn
            echo "${COMPREPLY[@]}"
            """);
    List<String> command = new ArrayList<>(List.of(BASH.toString(), ask.toString()));
    command.add(script.toString());
    command.addAll(List.of(typed.replace("= ", " = ").split(" ")));
    Process bash = new ProcessBuilder(command).redirectErrorStream(true).start();
    String out = new String(bash.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertThat(bash.waitFor(20, TimeUnit.SECONDS)).isTrue();
    List<String> words = List.of(out.strip().split(" "));
    List<String> expected = List.of(Objects.requireNonNullElse(offered, "").split(" "));
    assertWithMessage(typed).that(words).containsAtLeastElementsIn(expected);
    assertWithMessage(typed).that(words.size()).isAtMost(expected.size() + 2);
  }
}
