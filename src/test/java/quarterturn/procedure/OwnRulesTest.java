package quarterturn.procedure;

import static com.google.common.truth.Truth.assertThat;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quarterturn.procedure.read.Readings;
import quarterturn.procedure.read.Shelf;
import quarterturn.unit.Turn;

/** Limits and results of a user's own, beside those that come with the program. */
class OwnRulesTest {
  @TempDir Path own;

  private static String shipped(String place) {
    return new String(Readings.bytes("/" + place), StandardCharsets.UTF_8);
  }

  private Library rules(String place, String text) throws IOException, UnreadableException {
    Path file = own.resolve(place);
    Files.createDirectories(file.getParent());
    Files.writeString(file, text);
    return new Shelf(own).rules();
  }

  private Limits limits(String text) throws IOException, UnreadableException {
    return rules("safety/limits.yaml", text).limits();
  }

  /** Before most-reported, a file of limits ended with the hazards. */
  @Test
  void aFileWithoutTheLaterKeysTakesThoseOfTheProgram() throws Exception {
    String all = shipped("safety/limits.yaml").replaceAll("(?m)^ *#.*\n", "");
    String before =
        all.substring(0, all.indexOf("  most-reported")).replaceAll("(?m)^  day: .*\n", "");
    assertThat(limits(before)).isEqualTo(ShippedRules.LIMITS);
  }

  @Test
  void whatIsStricterHolds() throws Exception {
    Limits limits =
        limits(
            shipped("safety/limits.yaml")
                .replace("most-reported: 1 turn", "most-reported: 1/2 turn")
                .replace("  day: 24 h", "  day: 2 days")
                .replace("climate-points: 10 %", "climate-points: 5 %")
                .replace("after: 90 days", "after: 60 days"));
    assertThat(limits.mostReported()).isEqualTo(new Turn(0.5));
    assertThat(limits.day()).isEqualTo(Duration.ofDays(2));
    assertThat(limits.climate().points()).isEqualTo(5);
    assertThat(limits.rechecks().season().after()).isEqualTo(Duration.ofDays(60));
  }

  @ParameterizedTest
  @CsvSource({
    "most-reported: 1 turn, most-reported: 2 turns",
    "' day: 24 h', ' day: 23 h'",
    "put-off: 3, put-off: 4",
    "seen: 0.05 mm, seen: 0.04 mm",
    "wrong-way: 0.02 mm, wrong-way: 0.03 mm",
    "answer-expected: 1/8 turn, answer-expected: 1/4 turn",
    "pause: 6 h, pause: 7 h",
    "known-for: 7 days, known-for: 6 days",
    "climate-after: 7 days, climate-after: 8 days",
    "climate-points: 10 %, climate-points: 11 %",
    "'season-on:\n    after: 90 days', 'season-on:\n    after: 91 days'",
    "answered-at: 2, answered-at: 3",
  })
  void whatIsLaxerIsRefused(String from, String to) {
    String text = shipped("safety/limits.yaml");
    assertThat(text).contains(from);
    UnreadableException e =
        assertThrows(UnreadableException.class, () -> limits(text.replaceFirst(from, to)));
    String key = to.strip().split(":", 2)[0];
    assertThat(e).hasMessageThat().contains("over-limit: " + key + " is laxer than");
    assertThat(e).hasMessageThat().contains("or take it out");
  }

  @Test
  void theNameOfAnotherClimateSaysTheFigures() throws Exception {
    assertThat(climate(ShippedRules.ALL))
        .isEqualTo("the air changed by more than 10 points, or a week went by");
    String stricter =
        shipped("safety/limits.yaml")
            .replace("climate-after: 7 days", "climate-after: 36 h")
            .replace("climate-points: 10 %", "climate-points: 7.5 %");
    assertThat(climate(rules("safety/limits.yaml", stricter)))
        .isEqualTo("the air changed by more than 7.5 points, or 36 h went by");
  }

  private static String climate(Library rules) {
    return Objects.requireNonNull(rules.results().changes().get(Results.CLIMATE)).name();
  }

  @Test
  void resultsWithoutOffersTakeThoseOfTheProgram() throws Exception {
    String all = shipped("procedures/results.yaml");
    String without = all.substring(0, all.indexOf("offers:"));
    assertThat(rules("procedures/results.yaml", without).results().offers())
        .isEqualTo(ShippedRules.ALL.results().offers());
    Results own =
        rules("procedures/results.yaml", without + "offers: [{procedure: mine}]\n").results();
    assertThat(own.usual()).isEqualTo("mine");
    assertThat(own.shown()).isEmpty();
  }
}
