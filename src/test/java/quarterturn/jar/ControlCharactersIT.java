package quarterturn.jar;

import static com.google.common.truth.Truth.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** ESC, BEL and CSI never reach a terminal raw, wherever they come from. */
class ControlCharactersIT {
  private static final String EVIL = "a\u001b[31mb\u0007c\u009b31md\u001b]0;t\u0007";

  @TempDir Path folder;

  @ParameterizedTest
  @ValueSource(
      strings = {
        "instrument add EVIL --kind bass-34",
        "instrument show EVIL",
        "instrument add my-bass --kind EVIL",
        "instrument add my-bass --kind bass-34 --strings EVIL",
        "instrument add my-bass --kind bass-34 --joint-fret EVIL",
        "start EVIL --lines",
        "start EVIL.yaml --lines",
        "start relief --lines --kind EVIL",
        "start relief --lines --style EVIL",
        "start relief --lines --instrument EVIL",
        "start relief EVIL",
        "start relief --EVIL",
        "start nosuch --own EVIL",
        "resume EVIL --lines",
        "log show EVIL",
        "EVIL"
      })
  void onTheCommandLine(String typed) throws Exception {
    String[] args = typed.replace("EVIL", EVIL).split(" ", -1);
    JarProcess.Ran ran = new Bench(folder, Instant.now()).run(args);
    assertThat(ran.status()).isEqualTo(2);
    assertThat(ran.err()).containsMatch("31mb|must be one line");
    Control.none(ran);
  }

  @Test
  void inTheNameOfTheDataFolder() throws Exception {
    Path file = Files.createFile(folder.resolve("a-file"));
    String data = file.resolve(EVIL).toString();
    JarProcess.Ran ran = JarProcess.inside("", "start", "relief", "--lines", "--data", data);
    assertThat(ran.status()).isEqualTo(2);
    assertThat(ran.err()).startsWith("quarterturn: ");
    Control.none(ran);
  }

  @Test
  void inTheReasonForLiftingARest() throws Exception {
    Bench bench = new Bench(folder, Instant.now());
    Neck neck = Neck.of(1.50, 0.2);
    try (JarProcess jar = bench.start("--role", "technician")) {
      List<JsonNode> prompts = bench.playTo(jar, neck, "rest");
      JsonNode rest = prompts.get(prompts.size() - 1);
      assertThat(rest.path("step").textValue()).isEqualTo("rest");
      ObjectNode lift = neck.answer(rest).put("reason", EVIL);
      jar.send(lift.toString());
      assertThat(jar.prompt().has("prompt")).isTrue();
      Control.none(jar.end());
    }
    assertThat(Files.readString(bench.files().get(0))).contains("31mb");
    JarProcess.Ran log = bench.run("log", "show", bench.session());
    assertThat(log.out()).contains("The wait was ended early: a");
    Control.none(log);
  }

  @Test
  void inAnswersOnAPipe() throws Exception {
    String input = EVIL + "\n\n" + EVIL + "\nu\n" + EVIL + "\nquit\n";
    for (String face : List.of("--plain", "--lines")) {
      JarProcess.Ran ran =
          JarProcess.run(
              input, "start", "relief", face, "--kind", "bass-34", "--data", folder.toString());
      // A script in plain lines ends where a line is refused.
      assertThat(ran.status()).isEqualTo(face.equals("--plain") ? 2 : 0);
      assertThat(ran.out()).contains(face.equals("--plain") ? "[31mb" : "error");
      Control.none(ran);
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"\"Be\\x1b[31mgin.\"", "\"Be\\x07gin.\"", "\"Be\\x9b31mgin.\""})
  void inAProcedureTheyAreAFaultWithItsPlace(String text) throws Exception {
    Path own = Files.createDirectories(folder.resolve("own/procedures"));
    String yaml =
        """
        procedure: x
        revision: 1
        title: Small
        purpose: Small.
        tools: [capo]
        begin: start
        retune: start
        reread: start
        steps:
          - part: All
          - tell: start
            text: TEXT
            go: end
          - done: end
            text: The end.
            outcome: done
        """;
    // Written as an escape, and as the character itself.
    String raw =
        text.replace("\\x1b", "\u001b").replace("\\x07", "\u0007").replace("\\x9b", "\u009b");
    for (String one : List.of(text, raw)) {
      Files.write(
          own.resolve("x.yaml"), yaml.replace("TEXT", one).getBytes(StandardCharsets.UTF_8));
      JarProcess.Ran ran =
          JarProcess.inside(
              "",
              "start",
              "x",
              "--lines",
              "--own",
              folder.resolve("own").toString(),
              "--data",
              folder.toString());
      assertThat(ran.status()).isEqualTo(2);
      assertThat(ran.out()).isEmpty();
      assertThat(ran.err()).containsMatch("x\\.yaml:12:\\d+: .*cannot be shown");
      Control.none(ran);
    }
  }
}
