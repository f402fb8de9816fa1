package quarterturn.script;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import quarterturn.line.Invented;
import quarterturn.line.ScriptedBench;

class ScriptFaceTest {
  private static final String LEFT =
      "{\"left\":\"the rod stands as found; the strings are at pitch\"}";

  @Test
  void quitLeavesInOrder() {
    ScriptedBench bench = ScriptPlay.bench(Invented.tell());
    ScriptPlay play = ScriptPlay.of(bench, "{\"answer\":\"quit\"}", "{\"answer\":true}");
    assertThat(play.status()).isEqualTo(0);
    assertThat(play.printed().get(1)).isEqualTo(LEFT);
    assertThat(bench.left()).isTrue();
    assertThat(bench.answers()).isEmpty();
  }

  @Test
  void theEndOfInputLeavesInOrder() {
    ScriptedBench bench = ScriptPlay.bench(Invented.caution());
    ScriptPlay play = ScriptPlay.of(bench, new byte[0]);
    assertThat(play.status()).isEqualTo(0);
    assertThat(play.printed().get(1)).isEqualTo(LEFT);
    assertThat(bench.left()).isTrue();
  }

  @Test
  void aLineCutOffByTheEndIsStillAnAnswer() {
    ScriptedBench bench = ScriptPlay.bench(Invented.tell());
    byte[] typed = "\uFEFF{\"answer\":true}".getBytes(StandardCharsets.UTF_8);
    assertThat(ScriptPlay.of(bench, typed).status()).isEqualTo(0);
    assertThat(bench.answers()).hasSize(1);
  }

  @Test
  void whatIsNoObjectIsAnsweredWithAnErrorAndThePromptAgain() {
    List<String> bad =
        List.of(
            "",
            "yes",
            "true",
            "[true]",
            "{}",
            "{\"answer\":true} {}",
            "{\"answer\":true,\"answer\":true}",
            "{\"answer\":true,\"extra\":1}",
            "{'answer':true}",
            "{\"answer\":".repeat(5000),
            "[".repeat(60_000),
            "{\"answer\":\"" + "x".repeat(ScriptFace.LONGEST) + "\"}");
    for (String line : bad) {
      ScriptedBench bench = ScriptPlay.bench(Invented.tell());
      List<String> printed = ScriptPlay.of(bench, line, "{\"answer\":true}").printed();
      String what = line.substring(0, Math.min(40, line.length()));
      assertWithMessage(what).that(printed).hasSize(4);
      assertWithMessage(what).that(printed.get(1)).startsWith("{\"error\":");
      assertWithMessage(what).that(printed.get(1).length()).isLessThan(500);
      assertWithMessage(what).that(printed.get(2)).isEqualTo(printed.get(0));
    }
  }

  @Test
  void controlCharactersAreNeverEchoed() throws IOException {
    String nasty = "\u001b]0;x\u0007\u009b31m\u202e\u007f\u2028";
    List<String> lines =
        List.of(
            nasty,
            "{\"" + nasty + "\":1}",
            "{\"answer\":\"" + nasty + "\"}",
            "{\"answer\":\"\\u001b[31m\\u202e\"}",
            "{\"answer\":\"headstock\",\"at\":\"\\u009b\"}");
    for (String line : lines) {
      ScriptedBench bench = ScriptPlay.bench(Invented.place());
      String error = ScriptPlay.of(bench, line).printed().get(1);
      assertThat(error).startsWith("{\"error\":");
      String told = new ObjectMapper().readTree(error).get("error").textValue();
      assertThat(quarterturn.unit.Printable.of(told)).isEqualTo(told);
      assertThat(quarterturn.unit.Printable.of(error)).isEqualTo(error);
    }
  }

  @Test
  void aFullDiskIsSaidAndStopsTheSession() {
    ScriptedBench bench = ScriptPlay.bench(Invented.tell());
    bench.breakDisk();
    ScriptPlay play = ScriptPlay.of(bench, "{\"answer\":true}");
    assertThat(play.status()).isEqualTo(2);
    assertThat(play.printed().get(1)).contains("the disk is full");
  }

  @Test
  void nothingIsAnsweredOnceNobodyReads() {
    ScriptedBench bench = ScriptPlay.bench(Invented.tell());
    OutputStream closed =
        new OutputStream() {
          @Override
          public void write(int b) throws IOException {
            throw new IOException("closed");
          }
        };
    byte[] typed = "{\"answer\":true}\n".getBytes(StandardCharsets.UTF_8);
    int status =
        new ScriptFace(
                new ByteArrayInputStream(typed),
                new PrintStream(closed, true, StandardCharsets.UTF_8))
            .run(bench);
    assertThat(status).isEqualTo(2);
    assertThat(bench.answers()).isEmpty();
    assertThat(bench.left()).isTrue();
  }
}
