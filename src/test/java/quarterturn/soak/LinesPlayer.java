package quarterturn.soak;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;
import java.util.List;
import java.util.Random;

/** Answers prompts in JSON lines. */
final class LinesPlayer implements Player {
  private static final JsonMapper JSON = new JsonMapper();
  private static final List<String> NUMBERS = List.of("50", "9", "0", "1", "440", "-3", "2.1");

  private final Random random;
  private final Necks necks;
  private int refused;

  LinesPlayer(Random random, Necks necks) {
    this.random = random;
    this.necks = necks;
  }

  /** The last object that was printed in whole. */
  static JsonNode last(String out) {
    int end = out.lastIndexOf('\n');
    int start = end <= 0 ? -1 : out.lastIndexOf('\n', end - 1);
    return end < 0 ? JSON.createObjectNode() : parse(out.substring(start + 1, end));
  }

  private static JsonNode parse(String line) {
    try {
      return JSON.readTree(line);
    } catch (JsonProcessingException e) {
      return JSON.createObjectNode();
    }
  }

  /** The last prompt that was printed. */
  static JsonNode prompt(String out) {
    int from = out.lastIndexOf("{\"prompt\":");
    int end = from < 0 ? -1 : out.indexOf('\n', from);
    return end < 0 ? JSON.createObjectNode() : parse(out.substring(from, end));
  }

  /** Whether the last answer was refused. */
  static boolean refused(String out) {
    int prompt = out.lastIndexOf("{\"prompt\":");
    int error = out.lastIndexOf("{\"error\":");
    return error >= 0 && (prompt < error || out.substring(error, prompt).lines().count() == 1);
  }

  @Override
  public String next(String out) {
    refused = refused(out) ? refused + 1 : 0;
    JsonNode prompt = prompt(out);
    if (random.nextInt(60) == 0) {
      return word(List.of("correct", "quit", "undo", "cannot", "stop").get(random.nextInt(5)));
    }
    ObjectNode answer = JsonNodeFactory.instance.objectNode();
    switch (prompt.path("prompt").asText("")) {
      case "tell", "hazard" -> answer.put("answer", true);
      case "choose" -> answer.put("answer", option(prompt.path("options")));
      case "measure" -> measure(prompt, answer);
      case "turn" -> turn(prompt, answer);
      case "wait" -> waited(prompt, answer);
      case "question" -> question(prompt, answer);
      default -> answer.put("answer", "-");
    }
    if (refused > 2) {
      answer.removeAll();
      answer.put("answer", List.of("cannot", "touches", "1", "quit").get(random.nextInt(4)));
    }
    return answer + "\n";
  }

  private static String word(String word) {
    return "{\"answer\":\"" + word + "\"}\n";
  }

  private String option(JsonNode options) {
    int count = options.size();
    int chosen = count == 0 || random.nextInt(9) > 0 ? 0 : random.nextInt(count);
    JsonNode one = options.path(chosen);
    return one.isTextual() ? one.asText() : one.path("answer").asText(String.valueOf(chosen + 1));
  }

  private void question(JsonNode prompt, ObjectNode answer) {
    if (prompt.path("options").size() > 0) {
      JsonNode options = prompt.path("options");
      JsonNode one = options.path(random.nextInt(options.size()));
      answer.put("answer", one.isTextual() ? one.asText() : "1");
    } else {
      answer.put(
          "answer", List.of("Ana", "0.4 it looks so", "0.3", "done", "").get(random.nextInt(5)));
    }
  }

  private void measure(JsonNode prompt, ObjectNode answer) {
    int leaf = necks.leaf();
    if (prompt.path("held").isEmpty() && !prompt.has("which") || refused > 0) {
      answer.put("answer", Double.parseDouble(NUMBERS.get(random.nextInt(NUMBERS.size()))));
    } else if (prompt.path("quantity").asText("").equals("relief") && leaf >= 0) {
      answer.put("passes_mm", leaf / 100.0).put("lifts_mm", (leaf + 5) / 100.0);
    } else if (prompt.path("quantity").asText("").equals("relief")) {
      answer.put("answer", "touches");
    } else {
      answer.put("passes_mm", 1.5).put("lifts_mm", 1.6);
    }
  }

  private void turn(JsonNode prompt, ObjectNode answer) {
    double asked = prompt.path("turns").asDouble();
    double turned = random.nextInt(10) == 0 ? asked * (random.nextInt(7) / 2.0 - 1) : asked;
    necks.turn(turned);
    answer.put("turned", turned).put("feel", necks.feel());
  }

  private void waited(JsonNode prompt, ObjectNode answer) {
    answer.put("answer", "waited");
    if (random.nextInt(8) > 0) {
      Instant until = Instant.parse(prompt.path("until").asText("2027-01-01T00:00:00Z"));
      answer.put("at", until.plusSeconds(1).toString());
    } else if (random.nextBoolean()) {
      answer.put("reason", "in a hurry");
    }
  }
}
