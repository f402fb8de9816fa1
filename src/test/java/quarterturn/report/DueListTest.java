package quarterturn.report;

import static com.google.common.truth.Truth.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import quarterturn.session.Program;

class DueListTest {
  private static final Instant NOW = Told.BEGAN.plus(Duration.ofHours(2));

  @Test
  void itSaysWhenWhatAndWhatToTypeOnALineOfItsOwn() {
    assertThat(
            DueList.lines(
                Coming.BOTH, Map.of("blue-guitar", "4711"), NOW, Told.DATES, Program.here()))
        .containsExactly(
            "1 hour 45 minutes ago (10:15), blue-guitar, ticket 4711: Settled, ready; go on",
            "with relief.",
            "  quarterturn resume 2027-03-01-relief-x2m7",
            "",
            "In 22 hours (2027-03-02 10:00), practice-bass: A day after the rod was turned,",
            "read the relief again.",
            "  quarterturn start relief --instrument practice-bass")
        .inOrder();
    assertThat(DueList.lines(List.of(), Map.of(), NOW, Told.DATES, Program.here()))
        .containsExactly("Nothing is due.");
  }

  @Test
  void momentsAreSaidFromNow() {
    assertThat(Told.DATES.toOrFrom(NOW, NOW)).isEqualTo("now");
    assertThat(Told.DATES.toOrFrom(NOW, NOW.plusSeconds(59))).isEqualTo("now");
    assertThat(Told.DATES.toOrFrom(NOW, NOW.minusSeconds(59))).isEqualTo("now");
    assertThat(Told.DATES.toOrFrom(NOW, NOW.plusSeconds(60))).isEqualTo("in 1 minute (12:01)");
    assertThat(Told.DATES.toOrFrom(NOW, NOW.minus(Duration.ofDays(3))))
        .isEqualTo("3 days ago (2027-02-26 12:00)");
  }

  @Test
  void jsonIsOneObjectOnOneLine() throws IOException {
    String json = DueList.json(Coming.BOTH, NOW);
    assertThat(json.lines().count()).isEqualTo(1);
    JsonNode read = new JsonMapper().readTree(json);
    assertThat(read.get("now").asText()).isEqualTo("2027-03-01T12:00:00Z");
    assertThat(read.get("due")).hasSize(2);
    JsonNode wait = read.get("due").get(0);
    assertThat(wait.get("uid").asText()).isEqualTo(DueCalendar.uid(Coming.WAIT));
    assertThat(wait.get("at").asText()).isEqualTo("2027-03-01T10:15:00Z");
    assertThat(wait.get("overdue").asBoolean()).isTrue();
    assertThat(wait.get("why").asText()).isEqualTo("wait");
    assertThat(wait.get("instrument").asText()).isEqualTo("blue-guitar");
    assertThat(wait.get("procedure").asText()).isEqualTo("relief");
    assertThat(wait.get("session").asText()).isEqualTo("2027-03-01-relief-x2m7");
    assertThat(wait.get("what").asText()).isEqualTo("Settled, ready; go on with relief.");
    assertThat(wait.get("command").asText()).isEqualTo("resume 2027-03-01-relief-x2m7");
    assertThat(read.get("due").get(1).get("overdue").asBoolean()).isFalse();
  }

  @Test
  void jsonIsPlainAscii() {
    String json = DueList.json(List.of(Coming.on("琴\u009b", "🎸")), NOW);
    assertThat(json).matches("\\p{Print}*");
    assertThat(json).contains("\\u7434\\uFFFD");
  }
}
