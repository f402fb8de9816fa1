package quarterturn.jar;

import static com.google.common.truth.Truth.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quarterturn.session.journal.Journal;

/** The real process, told by the system to end. */
class TerminateIT {
  @TempDir Path folder;

  private void whole(Bench bench) throws Exception {
    Journal.Contents contents = Journal.read(bench.files().get(0));
    assertThat(contents.notice()).isNull();
    assertThat(contents.damaged()).isFalse();
  }

  @Test
  void inJsonLinesTheRecordIsWholeAndTheSessionGoesOn() throws Exception {
    Bench bench = new Bench(folder, Instant.now());
    Neck neck = Neck.of(0.72, 0.2);
    int answers;
    try (JarProcess jar = bench.start()) {
      answers = bench.playTo(jar, neck, "turn-rod").size() - 1;
      jar.terminate();
      assertThat(jar.ended().status()).isNotEqualTo(0);
    }
    whole(bench);
    assertThat(Said.all(bench.events())).hasSize(answers);
    try (JarProcess jar = bench.resume(bench.session())) {
      List<JsonNode> prompts = bench.playTo(jar, neck, "was-turn-made");
      assertThat(Bench.is(prompts.get(prompts.size() - 1), "was-turn-made")).isTrue();
      jar.send("{\"answer\":\"not-made\"}");
      List<JsonNode> rest = bench.playOut(jar, neck);
      assertThat(rest.get(rest.size() - 1).path("outcome").textValue()).isEqualTo("in-window");
    }
    Promises.kept(bench.events());
  }

  @Test
  void inPlainLinesTheRecordIsWholeAndTheSessionGoesOn() throws Exception {
    Bench bench = new Bench(folder, Instant.now());
    try (JarProcess jar =
        JarProcess.start(
            List.of(
                "start",
                "relief",
                "--plain",
                "--kind",
                "bass-34",
                "--style",
                "medium",
                "--data",
                folder.toString()))) {
      jar.lineWith("CAUTION");
      jar.send("u");
      jar.lineWith("Lay out the tools");
      jar.terminate();
      assertThat(jar.ended().status()).isNotEqualTo(0);
    }
    whole(bench);
    assertThat(Said.all(bench.events()).stream().map(Said::what))
        .containsExactly("accepted string-whip, posture");
    JarProcess.Ran resumed = bench.run("resume", "--plain");
    assertThat(resumed.status()).isEqualTo(0);
    assertThat(resumed.out()).contains("Welcome back.");
    assertThat(resumed.out()).contains("Everything is kept.");
    Control.none(resumed);
  }
}
