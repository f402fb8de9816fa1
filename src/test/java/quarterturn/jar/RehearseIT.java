package quarterturn.jar;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** {@code rehearse} as typed, to its end. */
class RehearseIT {
  @TempDir Path folder;
  private Bench bench = new Bench(Path.of("."), Instant.EPOCH);

  @BeforeEach
  void bench() {
    bench = new Bench(folder, Instant.now());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "rehearse --neck nosuch|choose one of: too-much, back-bow",
        "rehearse nosuch|there is no procedure \"nosuch\"",
        "rehearse --kind banjo|there is no kind banjo",
        "rehearse --seed x|\"x\" is not a whole number",
        "rehearse --seed 1 --neck dead|--neck and --seed: give one of them",
        "rehearse --fleet 0|--fleet: a number of necks from 1 to 1000000",
        "rehearse --fleet 10 --auto|--fleet goes with --seed and --json alone",
        "rehearse --json|--json goes with --fleet",
        "rehearse --speed 2|--speed goes with --auto",
        "rehearse --auto --speed 0|--speed: a number from 0.1 to 1000",
        "rehearse --auto --speed NaN|--speed: a number from 0.1 to 1000"
      })
  void wrongUsageIsOneClearLine(String typed, String says) throws Exception {
    JarProcess.Ran ran = bench.run(typed.split(" ", -1));
    assertThat(ran.status()).isEqualTo(2);
    assertThat(ran.out()).isEmpty();
    assertThat(ran.err().lines().toList()).hasSize(1);
    assertThat(ran.err()).contains(says);
  }

  @Test
  void aFleetPrintsItsFigures() throws Exception {
    JarProcess.Ran ran = bench.run("rehearse", "--fleet", "20", "--seed", "2");
    assertThat(ran.status()).isEqualTo(0);
    assertThat(ran.err()).isEmpty();
    for (String figure :
        new String[] {
          "Fleet of 20 sound necks",
          "settled in range",
          "moves, mean",
          "moves, 95 of 100",
          "overshoots a neck",
          "wrong hand-overs",
          "Missed faults: 0",
          "set back between",
          "slack to 0.15",
          "Most ever turned",
          "rule of thumb",
          "knowing the neck"
        }) {
      assertThat(ran.out()).contains(figure);
    }
    for (String line : ran.out().lines().toList()) {
      assertWithMessage(line).that(line.length()).isAtMost(80);
    }
    assertThat(bench.run("rehearse", "--fleet", "20", "--seed", "2").out()).isEqualTo(ran.out());
  }

  @Test
  void aFleetAsJsonSaysTheSame() throws Exception {
    JsonNode json = bench.run("rehearse", "--fleet", "20", "--seed", "2", "--json").json().get(0);
    assertThat(json.get("necks").asInt()).isEqualTo(20);
    assertThat(json.get("most_turns").asDouble()).isAtMost(1);
    assertThat(json.get("advised").get("settled").asDouble()).isAtLeast(0.95);
    assertThat(json.get("missed_faults").asInt()).isEqualTo(0);
  }

  @Test
  void itPlaysByItselfInPlainLines() throws Exception {
    JarProcess.Ran ran = bench.run("rehearse", "--neck", "dead", "--auto", "--speed", "1000");
    assertThat(ran.status()).isEqualTo(1);
    assertThat(ran.out()).contains("To meet it again: rehearse --neck dead.");
    assertThat(ran.out()).contains("> 0.60 passes, 0.65 lifts");
    assertThat(ran.out()).contains("The neck as it really was: the rod does nothing.");
    assertWithMessage("nothing is kept").that(folder.toFile().list()).isEmpty();
  }

  @Test
  void itPlaysByItselfAsJsonLines() throws Exception {
    JarProcess.Ran ran = bench.run("rehearse", "--seed", "11", "--auto", "--lines");
    JsonNode last = ran.json().get(ran.json().size() - 1);
    assertThat(last.get("notes").toString()).contains("The neck as it really was");
    assertThat(ran.out()).doesNotContain("\"error\"");
  }

  @Test
  void aPersonPractisesInPlainLinesAndLeaves() throws Exception {
    JarProcess.Ran ran =
        JarProcess.inside("?\nquit\n", "rehearse", "--plain", "--data", folder.toString());
    assertThat(ran.status()).isEqualTo(0);
    assertThat(ran.out()).contains("A rehearsal on a simulated neck; nothing of it is kept.");
    assertThat(ran.out()).contains("Of a rehearsal nothing is kept.");
    assertThat(folder.toFile().list()).isEmpty();
  }

  @Test
  void theHomeViewLeadsThere() throws Exception {
    JarProcess.Ran ran = JarProcess.inside("rehearse\nquit\n", "--data", folder.toString());
    assertThat(ran.status()).isEqualTo(0);
    assertThat(ran.out()).contains("Watch a session that plays by itself");
    assertThat(ran.out()).contains("Session rehearsal.");
    assertThat(ran.out()).containsMatch("rehearse --seed \\d+");
  }

  @Test
  void theHomeViewLeadsThereInJsonLinesToo() throws Exception {
    String typed = "{\"answer\":\"rehearse\"}\n{\"answer\":\"quit\"}\n";
    JarProcess.Ran ran = JarProcess.inside(typed, "--lines", "--data", folder.toString());
    assertThat(ran.status()).isEqualTo(0);
    List<String> lines = ran.out().lines().toList();
    assertThat(lines).hasSize(3);
    assertThat(lines.get(0)).contains("\"name\":\"rehearse\"");
    assertThat(lines.get(1)).startsWith("{\"prompt\":\"hazard\"");
    assertThat(lines.get(2)).startsWith("{\"left\":");
  }
}
