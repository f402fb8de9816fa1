package quarterturn.script;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import quarterturn.procedure.Hazard;
import quarterturn.session.Prompt;
import quarterturn.session.PromptText;
import quarterturn.unit.Decimals;
import quarterturn.unit.Printable;

/** A prompt as one JSON object, its keys in a fixed order. */
final class PromptJson {
  private static final Prompt.Cases<String> KIND =
      new Prompt.Cases<>(
          tell -> "tell",
          caution -> "hazard",
          choose -> "choose",
          write -> "write",
          measure -> "measure",
          turn -> "turn",
          wait -> "wait",
          done -> "done",
          over -> "hand-over");

  private PromptJson() {}

  static ObjectNode of(Prompt prompt) {
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    PromptText said = prompt.said();
    json.put("prompt", prompt.match(KIND));
    json.put("step", clean(said.step()));
    if (!said.first().isEmpty()) {
      texts(json, "first", said.first().stream().map(PromptText.First::text).toList());
    }
    json.put("text", clean(said.text()));
    List<Hazard> hazards =
        prompt instanceof Prompt.Caution caution ? caution.hazards() : said.hazards();
    texts(json, "hazards", hazards.stream().map(Hazard::id).toList());
    if (prompt.ended()) {
      json.put("why", clean(said.text()));
    } else if (said.why() != null) {
      json.put("why", clean(said.why()));
    }
    if (!said.notes().isEmpty()) {
      texts(json, "notes", said.notes());
    }
    return details(json, prompt);
  }

  private static ObjectNode details(ObjectNode json, Prompt prompt) {
    return prompt.match(
        new Prompt.Cases<>(
            tell -> json,
            caution -> hazards(json, caution.hazards()),
            choose -> options(json, choose.options()),
            write -> json,
            measure -> measure(json, measure),
            turn -> turn(json, turn),
            wait -> wait(json, wait),
            done -> json.put("outcome", clean(done.outcome())),
            over -> json.put("outcome", clean(over.outcome()))));
  }

  private static ObjectNode hazards(ObjectNode json, List<Hazard> page) {
    ArrayNode all = json.putArray("page");
    for (Hazard hazard : page) {
      ObjectNode one = all.addObject();
      one.put("word", hazard.word().name());
      one.put("harm", clean(hazard.harm()));
      one.put("avoid", clean(hazard.avoid()));
    }
    return json;
  }

  private static ObjectNode options(ObjectNode json, List<Prompt.Option> options) {
    texts(json, "options", options.stream().map(Prompt.Option::id).toList());
    return texts(json, "labels", options.stream().map(Prompt.Option::label).toList());
  }

  private static ObjectNode wait(ObjectNode json, Prompt.Wait wait) {
    json.put("minutes", Math.max(0, (wait.length().toSeconds() + 59) / 60));
    json.put("until", wait.until().toString());
    json.put("meanwhile", clean(wait.meanwhile()));
    return json.put("rest", wait.rest());
  }

  private static ObjectNode measure(ObjectNode json, Prompt.Measure measure) {
    json.put("quantity", measure.quantity().word());
    json.put("unit", measure.quantity().unit());
    ArrayNode held = json.putArray("held");
    measure.held().forEach(held::add);
    json.put("read_at", measure.readAt());
    if (measure.string() != null) {
      json.put("string", clean(measure.string()));
    }
    if (measure.which() != null) {
      json.put("which", measure.which().word());
    }
    return json;
  }

  private static ObjectNode turn(ObjectNode json, Prompt.TurnRod turn) {
    json.put("what", "rod");
    json.put("turns", turn.turn().turns());
    json.put("direction", turn.direction());
    json.put("limit", turn.limit().turns());
    if (turn.expected() != null) {
      ArrayNode expected = json.putArray("expected_mm");
      mm(expected, turn.expected().lowMm());
      mm(expected, turn.expected().highMm());
    }
    return json.put("can_undo", turn.canUndo());
  }

  /** Adds a bound in millimetres to an array, null where it is infinite. */
  private static void mm(ArrayNode array, double mm) {
    if (Double.isInfinite(mm)) {
      array.addNull();
    } else {
      array.add(new BigDecimal(Decimals.plain(mm)));
    }
  }

  private static ObjectNode texts(ObjectNode json, String key, List<String> texts) {
    ArrayNode array = json.putArray(key);
    texts.forEach(text -> array.add(clean(text)));
    return json;
  }

  /** The text with unprintable characters replaced in every line; line breaks stay. */
  private static String clean(String text) {
    return Arrays.stream(text.split("\n", -1)).map(Printable::of).collect(Collectors.joining("\n"));
  }
}
