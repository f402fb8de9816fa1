package quarterturn.procedure;

import static com.google.common.truth.Truth.assertThat;
import static java.util.Objects.requireNonNull;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quarterturn.procedure.check.Checker;
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
    return requireNonNull(rules.results().changes().get(Results.CLIMATE)).name();
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

  private String refused(String place, String text) {
    UnreadableException e = assertThrows(UnreadableException.class, () -> rules(place, text));
    return String.valueOf(e.getMessage());
  }

  private static final String HAZARD =
      """
      hazards:
        - hazard: clamp
          word: WARNING
          harm: A clamp pinches.
          avoid: Keep your fingers out.
        - hazard: rod-force
          word: CAUTION
          with: [turn, neck-fast]
          avoid: >-
            Here one finger. Turn with the force of two fingers. Stop at a sharp rise of resistance, a
            creak, a crack or a slip, and do not try again.
      """;

  @Test
  void hazardsAreAddedToThoseOfTheProgramAndMadeStricter() throws Exception {
    Map<String, Hazard> hazards = rules("safety/hazards.yaml", HAZARD).hazards();
    Map<String, Hazard> program = ShippedRules.ALL.hazards();
    assertThat(hazards.keySet()).containsAtLeastElementsIn(program.keySet());
    assertThat(hazards).hasSize(program.size() + 1);
    Hazard force = requireNonNull(hazards.get("rod-force"));
    assertThat(force.word()).isEqualTo(Hazard.Word.CAUTION);
    assertThat(force.harm()).isEqualTo(requireNonNull(program.get("rod-force")).harm());
    assertThat(force.with()).containsExactly("turn", "neck-fast").inOrder();
    assertThat(force.avoid()).startsWith("Here one finger.");
  }

  @Test
  void wordsOfAHazardStandBesideThoseOfTheProgram() throws Exception {
    String text = "hazards:\n  - hazard: finish\n    words: [scraper]\n";
    Hazard finish = requireNonNull(rules("safety/hazards.yaml", text).hazards().get("finish"));
    assertThat(finish.words()).containsAtLeast("with a driver", "scraper");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "tool-slip | word: NOTICE | NOTICE of tool-slip is laxer than CAUTION, which comes with",
        "tool-slip | harm: Nothing. | harm of tool-slip lacks \"A key that slips can be",
        "tool-slip | avoid: As you like. | avoid of tool-slip lacks \"Seat the key fully",
        "tool-slip | with: [] | with of tool-slip lacks turn, which comes with the program",
      })
  void aLaxerHazardIsRefused(String id, String says, String fault) {
    String text = "hazards:\n  - hazard: %s\n    %s\n".formatted(id, says);
    assertThat(refused("safety/hazards.yaml", text))
        .contains("hazards.yaml:3:5: over-limit: " + fault);
  }

  @Test
  void aChangeMaySpoilMore() throws Exception {
    Results results =
        rules(
                "procedures/results.yaml",
                """
                changes:
                  - change: rod
                    spoils: [pitch, relief, action, intonation, buzz, nut-clearance]
                """)
            .results();
    assertThat(results.spoils(Results.ROD, "nut-clearance")).isTrue();
    assertThat(results.results()).isEqualTo(ShippedRules.ALL.results().results());
    assertThat(results.changes().keySet())
        .containsExactlyElementsIn(ShippedRules.ALL.results().changes().keySet())
        .inOrder();
    assertThat(results.offers()).isEqualTo(ShippedRules.ALL.results().offers());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "changes | change: rod | spoils: [pitch, relief, buzz] | spoils of rod lacks action, intonation",
        "changes | change: nut | recheck: [] | recheck of nut lacks relief, which comes with",
        "results | result: relief | quantity: action | the result relief is laxer than relief, which",
      })
  void aChangeThatSpoilsLessIsRefused(String list, String id, String says, String fault) {
    String text = "%s:\n  - %s\n    %s\n".formatted(list, id, says);
    assertThat(refused("procedures/results.yaml", text))
        .contains("results.yaml:3:5: over-limit: " + fault);
  }

  /** What comes with the program was proven with the blocks that come with it. */
  @Test
  void aProcedureWithABlockOfOnesOwnIsProven() throws Exception {
    String block = shipped("procedures/blocks/one-turn.yaml");
    assertThat(block).contains("    establishes: [detuned]\n");
    Path file = own.resolve("procedures/blocks/one-turn.yaml");
    Files.createDirectories(file.getParent());
    Files.writeString(file, block.replace("    establishes: [detuned]\n", ""));
    UnreadableException e =
        assertThrows(UnreadableException.class, () -> Checker.proven(new Shelf(own), "relief"));
    assertThat(e).hasMessageThat().contains(": turn-detuned: the turn turn-rod");
  }
}
