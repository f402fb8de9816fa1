package quarterturn.command;

import static com.google.common.truth.Truth.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.parallel.Isolated;

/** Home, due, log, sheet, history and the query say the same of a session. */
@Isolated
class StatesAgreeTest {
  @TempDir Path folder;
  private Shop shop = new Shop(Path.of("unset"));
  private Map<String, String> sessions = Map.of();

  @BeforeEach
  void threeInstruments() throws Exception {
    shop = Shop.of(folder, "blue", "green", "red");
    String begun = LeftOff.begun(shop, "red");
    shop.pass(Duration.ofSeconds(20));
    String settling = LeftOff.settling(shop, "green");
    String half = LeftOff.half(shop, "blue");
    sessions = Map.of("blue", half, "green", settling, "red", begun);
  }

  private String run(String... args) {
    Captured ran = Captured.of(shop, "quit\n", Captured.at(folder, args));
    assertThat(ran.status()).isEqualTo(0);
    return ran.out().replaceAll("\\s+", " ");
  }

  private List<JsonNode> states() throws Exception {
    List<JsonNode> states = new ArrayList<>();
    Captured ran = Captured.of(shop, "", Captured.at(folder, "due", "--lines"));
    for (String line : ran.out().lines().toList()) {
      states.add(new JsonMapper().readTree(line));
    }
    return states;
  }

  private static String sentence(String words) {
    return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }

  @Test
  void inWordsAndMinutes() throws Exception {
    String home = run("--plain");
    String due = run("due");
    String log = run("log", "list");
    for (JsonNode state : states()) {
      String words = state.get("words").asText();
      String instrument = state.get("instrument").asText();
      String session = state.get("session").asText();
      assertThat(session).isEqualTo(sessions.get(instrument));
      assertThat(home).contains(sentence(words));
      assertThat(log).contains("open: " + words);
      assertThat(run("instrument", "history", instrument))
          .contains("Open: " + session + ": " + words + ".");
      assertThat(run("instrument", "show", instrument)).contains("open: " + words);
      assertThat(run("log", "export", session)).contains("Still open: " + words + ".");
      if (state.get("until").isNull()) {
        assertThat(due).contains(instrument + ", ticket T-" + instrument + ": " + sentence(words));
      }
    }
    // The end and the minutes are the same wherever a wait is told of.
    String left = words("green").replaceAll(".* (\\d+ minutes?) left", "$1");
    String end = words("green").replaceAll(".*until (\\d\\d:\\d\\d).*", "$1");
    assertThat(home).contains("on green, ticket T-green: rod turned, " + left + " left");
    assertThat(due).contains("In " + left + " (" + end + "), green, ticket T-green: Rod turned,");
  }

  private String words(String instrument) throws Exception {
    return states().stream()
        .filter(state -> state.get("instrument").asText().equals(instrument))
        .map(state -> state.get("words").asText())
        .findFirst()
        .orElseThrow();
  }

  @Test
  void theHalfMadeTurnIsFirstAndAWaitThatIsOverIsMarked() throws Exception {
    assertThat(states().stream().map(state -> state.get("state").asText()).toList())
        .containsExactly("half-turn", "waits", "open")
        .inOrder();
    shop.pass(Duration.ofHours(1));
    assertThat(states().stream().map(state -> state.get("state").asText()).toList())
        .containsExactly("half-turn", "ready", "open")
        .inOrder();
    assertThat(run("--plain"))
        .containsMatch(
            "1. Neck relief on blue, ticket T-blue: rod turn half made .*"
                + "2. Neck relief on green, ticket T-green: rod turned, settled, ready .*"
                + "3. Neck relief on red, ticket T-red: strings as found ");
  }

  @Test
  void theQuerySaysAllThatAFrontEndNeeds() throws Exception {
    JsonNode half = states().get(0);
    assertThat(half.get("ticket").asText()).isEqualTo("T-blue");
    assertThat(half.get("by").asText()).isEqualTo("Ana");
    assertThat(half.get("procedure").asText()).isEqualTo("relief");
    assertThat(half.get("place").asText()).matches("Neck relief, part \\d of 7: Turn");
    assertThat(half.get("rod_turned").asBoolean()).isTrue();
    assertThat(half.get("ready").asBoolean()).isTrue();
    assertThat(half.get("command").asText()).isEqualTo("resume " + sessions.get("blue"));
    JsonNode waits = states().get(1);
    assertThat(waits.get("ready").asBoolean()).isFalse();
    assertThat(waits.get("until").asText()).startsWith("2027-03-02T");
  }
}
