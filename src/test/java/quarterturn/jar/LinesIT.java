package quarterturn.jar;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Whole sessions through the real jar's JSON lines. Necks are invented. */
class LinesIT {
  @TempDir Path folder;

  private Bench bench() {
    return new Bench(folder, Instant.now());
  }

  private static JsonNode last(List<JsonNode> prompts) {
    return prompts.get(prompts.size() - 1);
  }

  @ParameterizedTest
  @CsvSource({"-0.20", "0.72"})
  void aNeckOutsideItsWindowIsBroughtIntoIt(double gap) throws Exception {
    Bench bench = bench();
    Neck neck = Neck.of(gap, 0.2);
    try (JarProcess jar = bench.start()) {
      JsonNode end = last(bench.playOut(jar, neck));
      assertThat(end.path("prompt").textValue()).isEqualTo("done");
      assertThat(end.path("outcome").textValue()).isEqualTo("in-window");
      assertThat(end.path("why").textValue()).contains("in range, 0.25 to 0.40 mm");
      JarProcess.Ran ran = jar.ended();
      assertThat(ran.status()).isEqualTo(0);
      assertThat(ran.err()).isEmpty();
    }
    assertThat(neck.gap()).isAtLeast(0.25);
    assertThat(neck.gap()).isAtMost(0.40);
    Promises.kept(bench.events());
  }

  @ParameterizedTest
  @CsvSource({
    "0.72, 0.2, jammed, headstock, jammed, does not move with two fingers",
    "0.72, 0.0, smooth, headstock, no-response, have not changed the gap",
    "0.72, 0.2, noise, headstock, noise, giving way"
  })
  void whatTheRodCannotCureIsHandedOver(
      double gap, double response, String feel, String place, String outcome, String why)
      throws Exception {
    Bench bench = bench();
    try (JarProcess jar = bench.start()) {
      JsonNode end = last(bench.playOut(jar, new Neck(gap, response, feel, place)));
      assertThat(end.path("prompt").textValue()).isEqualTo("hand-over");
      assertThat(end.path("outcome").textValue()).isEqualTo(outcome);
      assertThat(end.path("why").textValue()).contains(why);
      JarProcess.Ran ran = jar.ended();
      assertThat(ran.status()).isEqualTo(1);
      assertThat(ran.err()).isEmpty();
    }
    JarProcess.Ran again = bench.run("resume", bench.session(), "--lines");
    assertThat(again.status()).isEqualTo(2);
    assertThat(again.err()).contains("this session has ended");
  }

  @Test
  void aWrongAnswerGetsAnErrorAndTheSamePromptAgain() throws Exception {
    Bench bench = bench();
    Neck neck = Neck.of(0.72, 0.2);
    List<String> wrong =
        List.of(
            "",
            "xx",
            "{",
            "[]",
            "null",
            "{}",
            "{\"answer\":\"no-such-thing\"}",
            "{\"answer\":true,\"answer\":false}",
            "{\"answer\":\"\\u001b[31m\\u0007\\u009b31m\"}",
            "{\"passes_mm\":0.50,\"lifts_mm\":0.40}",
            "{\"turned\":0.125}",
            "{\"turned\":9,\"feel\":\"smooth\"}",
            "{\"turned\":1e999,\"feel\":\"smooth\"}",
            "{\"answer\":\"waited\",\"at\":\"yesterday\"}",
            "{\"answer\":true,\"at\":\"1999-01-01T00:00:00Z\"}",
            "[".repeat(70_000));
    try (JarProcess jar = bench.start()) {
      int answers = 0;
      for (String step : List.of("prepare", "inspect", "settle-first", "found-low", "turn-rod")) {
        List<JsonNode> prompts = bench.playTo(jar, neck, step);
        answers += prompts.size();
        JsonNode prompt = last(prompts);
        assertThat(prompt.path("step").textValue()).isEqualTo(step);
        for (String one : wrong) {
          jar.send(one);
          JsonNode error = jar.prompt();
          assertWithMessage("%s to %s", one, prompt).that(error.has("error")).isTrue();
          assertThat(error.path("error").textValue()).contains("this prompt takes");
          assertThat(jar.prompt()).isEqualTo(prompt);
        }
        jar.send(bench.timed(neck.answer(prompt), prompt));
      }
      assertThat(Bench.is(jar.prompt(), "key-out")).isTrue();
      assertThat(Said.all(bench.events())).hasSize(answers);
      JarProcess.Ran ran = jar.end();
      assertThat(ran.status()).isEqualTo(0);
      Control.none(ran);
    }
  }

  @Test
  void rubbishBytesAreAnsweredWithErrorsAndNothingElse() throws Exception {
    byte[] rubbish = new byte[20_000];
    new Random(20270304).nextBytes(rubbish);
    JarProcess.Ran ran =
        JarProcess.run(
            rubbish,
            "start",
            "relief",
            "--lines",
            "--data",
            folder.toString(),
            "--kind",
            "bass-34");
    assertThat(ran.status()).isEqualTo(0);
    assertThat(ran.err()).isEmpty();
    Control.none(ran);
    List<JsonNode> lines = ran.json();
    assertThat(lines.size()).isGreaterThan(50);
    for (int i = 0; i < lines.size() - 1; i++) {
      assertThat(lines.get(i).has(i % 2 == 0 ? "prompt" : "error")).isTrue();
    }
    assertThat(last(lines).has("left")).isTrue();
  }

  @ParameterizedTest
  @CsvSource({"true", "false"})
  void leavingAndTheEndOfInputAreInOrderAndCanBeResumed(boolean quit) throws Exception {
    Bench bench = bench();
    Neck neck = Neck.of(0.72, 0.2);
    try (JarProcess jar = bench.start()) {
      bench.playTo(jar, neck, "inspect");
      if (quit) {
        jar.send("{\"answer\":\"quit\"}");
      }
      JarProcess.Ran ran = quit ? jar.ended() : jar.end();
      assertThat(ran.status()).isEqualTo(0);
      assertThat(last(ran.json()).path("left").textValue()).contains("rod not turned");
    }
    // Without a name, since only one session is unfinished.
    JarProcess.Ran resumed = bench.run("resume", "--lines");
    assertThat(resumed.status()).isEqualTo(0);
    assertThat(Bench.is(resumed.json().get(0), "welcome-back")).isTrue();
    try (JarProcess jar = bench.resume(bench.session())) {
      JsonNode end = last(bench.playOut(jar, neck));
      assertThat(end.path("outcome").textValue()).isEqualTo("in-window");
      assertThat(jar.ended().status()).isEqualTo(0);
    }
  }

  @Test
  void aSessionIsOpenInOneProcessAtATime() throws Exception {
    Bench bench = bench();
    try (JarProcess jar = bench.start()) {
      jar.prompt();
      JarProcess.Ran second = bench.run("resume", bench.session(), "--lines");
      assertThat(second.status()).isEqualTo(2);
      assertThat(second.err()).contains("is open in another window");
      assertThat(second.out()).isEmpty();
    }
  }

  @Test
  void anInstrumentWithANameRemembersItsNeck() throws Exception {
    assertThat(bench().run("instrument", "add", "my-bass", "--kind", "bass-34").status())
        .isEqualTo(0);
    double first = firstTurn(new Bench(folder, Instant.now().minus(Duration.ofDays(20))), 0.56);
    double second = firstTurn(bench(), 0.46);
    // The most on a neck whose answer is not known yet: our policy on common practice, no source.
    assertThat(first).isWithin(1e-9).of(0.125);
    assertThat(second).isGreaterThan(0.125);
    assertThat(second).isAtMost(0.25);
    JarProcess.Ran shown = bench().run("instrument", "show", "my-bass");
    assertThat(shown.out()).contains("relief");
    assertThat(bench().files()).hasSize(2);
  }

  /** Plays a session on the named instrument and says how far its first turn was. */
  private static double firstTurn(Bench bench, double gap) throws Exception {
    try (JarProcess jar = bench.start("--instrument", "my-bass")) {
      List<JsonNode> prompts = bench.playOut(jar, Neck.of(gap, 0.1));
      assertThat(last(prompts).path("outcome").textValue()).isEqualTo("in-window");
      return prompts.stream()
          .filter(p -> Bench.kind(p).equals("turn"))
          .findFirst()
          .orElseThrow()
          .path("turns")
          .doubleValue();
    }
  }
}
