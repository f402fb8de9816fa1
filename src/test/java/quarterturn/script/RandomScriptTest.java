package quarterturn.script;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import quarterturn.line.Invented;
import quarterturn.line.ScriptedBench;
import quarterturn.session.Prompt;

/** Lines made at random never break the face, and never accept a hazard by accident. */
class RandomScriptTest {
  private static final List<String> GOOD =
      List.of(
          "{\"answer\":true}",
          "{\"answer\":\"headstock\"}",
          "{\"passes_mm\":0.3,\"lifts_mm\":0.35}",
          "{\"answer\":\"touches\"}",
          "{\"answer\":\"cannot\"}",
          "{\"answer\":48}",
          "{\"turned\":0.125,\"feel\":\"smooth\"}",
          "{\"answer\":\"undo\"}",
          "{\"answer\":\"waited\",\"reason\":\"known\"}",
          "{\"answer\":\"correct\"}");

  @Test
  void twentyThousandLines() throws JsonProcessingException {
    Random random = new Random(20_270_302);
    int hazards = 0;
    for (int run = 0; run < 100; run++) {
      List<Prompt> prompts = new ArrayList<>();
      for (int i = 0; i < 201; i++) {
        prompts.add(
            List.of(
                    Invented.tell(),
                    Invented.caution(),
                    Invented.place(),
                    Invented.relief(),
                    Invented.humidity(),
                    Invented.tighten(),
                    Invented.rest())
                .get(random.nextInt(7)));
      }
      List<String> lines = new ArrayList<>();
      for (int i = 0; i < 200; i++) {
        lines.add(line(random));
      }
      ScriptedBench bench = new ScriptedBench(prompts);
      byte[] typed = (String.join("\n", lines) + "\n").getBytes(StandardCharsets.UTF_8);
      ScriptPlay play = ScriptPlay.of(bench, typed);
      assertThat(play.status()).isEqualTo(0);
      hazards += follow(play, lines, bench.accepted().size());
    }
    assertWithMessage("the test reached its hazards").that(hazards).isGreaterThan(100);
  }

  /** Walks prompts and lines side by side; returns how many hazards were accepted. */
  private static int follow(ScriptPlay play, List<String> lines, int accepted)
      throws JsonProcessingException {
    ObjectMapper json = new ObjectMapper();
    int at = 0;
    int rightly = 0;
    for (int i = 0; i < play.printed().size(); i++) {
      boolean hazard =
          json.readTree(play.printed().get(i)).path("prompt").asText().equals("hazard");
      if (!json.readTree(play.printed().get(i)).has("prompt")) {
        continue;
      }
      boolean exact = at < lines.size() && lines.get(at).equals(GOOD.get(0));
      rightly += hazard && exact ? 1 : 0;
      at++;
    }
    assertThat(at).isEqualTo(lines.size() + 1);
    assertThat(accepted).isEqualTo(rightly);
    return accepted;
  }

  private static String line(Random random) {
    String good = GOOD.get(random.nextInt(GOOD.size()));
    if (random.nextInt(3) > 0) {
      return good;
    }
    StringBuilder bent = new StringBuilder(good);
    for (int i = random.nextInt(3); i >= 0; i--) {
      // A letter of no JSON word, so that a bent line never means the same as the good one.
      bent.setCharAt(
          random.nextInt(bent.length()), "#\u001b{}[]:\u202e\"9".charAt(random.nextInt(10)));
    }
    return bent.toString();
  }
}
