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
import quarterturn.session.Said;
import quarterturn.unit.Decimals;
import quarterturn.unit.Printable;

/** A prompt as one JSON object, its keys in a fixed order. */
final class PromptJson {
  private PromptJson() {}

  static ObjectNode of(Prompt prompt) {
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    Said said = prompt.said();
    json.put("prompt", kind(prompt));
    json.put("step", clean(said.step()));
    if (!said.first().isEmpty()) {
      texts(json, "first", said.first().stream().map(Said.First::text).toList());
    }
    json.put("text", clean(said.text()));
    if (prompt instanceof Prompt.Caution caution) {
      texts(json, "hazards", List.of(caution.hazard().id()));
    } else {
      texts(json, "hazards", said.hazards().stream().map(Hazard::id).toList());
    }
    if (prompt.ended()) {
      json.put("why", clean(said.text()));
    } else if (said.why() != null) {
      json.put("why", clean(said.why()));
    }
    if (!said.notes().isEmpty()) {
      texts(json, "notes", said.notes());
    }
    details(json, prompt);
    return json;
  }

  private static String kind(Prompt prompt) {
    if (prompt instanceof Prompt.Tell) {
      return "tell";
    }
    if (prompt instanceof Prompt.Caution) {
      return "hazard";
    }
    if (prompt instanceof Prompt.Choose) {
      return "choose";
    }
    if (prompt instanceof Prompt.Write) {
      return "write";
    }
    if (prompt instanceof Prompt.Measure) {
      return "measure";
    }
    if (prompt instanceof Prompt.TurnRod) {
      return "turn";
    }
    if (prompt instanceof Prompt.Wait) {
      return "wait";
    }
    return prompt instanceof Prompt.Done ? "done" : "hand-over";
  }

  private static void details(ObjectNode json, Prompt prompt) {
    if (prompt instanceof Prompt.Caution caution) {
      json.put("word", caution.hazard().word().name());
      json.put("harm", clean(caution.hazard().harm()));
      json.put("avoid", clean(caution.hazard().avoid()));
    } else if (prompt instanceof Prompt.Choose choose) {
      texts(json, "options", choose.options().stream().map(Prompt.Option::id).toList());
      texts(json, "labels", choose.options().stream().map(Prompt.Option::label).toList());
    } else if (prompt instanceof Prompt.Measure measure) {
      measure(json, measure);
    } else if (prompt instanceof Prompt.TurnRod turn) {
      turn(json, turn);
    } else if (prompt instanceof Prompt.Wait wait) {
      json.put("minutes", Math.max(0, (wait.length().toSeconds() + 59) / 60));
      json.put("until", wait.until().toString());
      json.put("rest", wait.rest());
    } else if (prompt instanceof Prompt.Done done) {
      json.put("outcome", clean(done.outcome()));
    } else if (prompt instanceof Prompt.HandOver over) {
      json.put("outcome", clean(over.outcome()));
    }
  }

  private static void measure(ObjectNode json, Prompt.Measure measure) {
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
  }

  private static void turn(ObjectNode json, Prompt.TurnRod turn) {
    json.put("what", "rod");
    json.put("turns", turn.turn().turns());
    json.put("direction", turn.direction());
    json.put("limit", turn.limit().turns());
    if (turn.expected() != null) {
      ArrayNode expected = json.putArray("expected_mm");
      mm(expected, turn.expected().lowMm());
      mm(expected, turn.expected().highMm());
    }
    json.put("can_undo", turn.canUndo());
  }

  /** A bound with the digits it has, or null where there is none. */
  private static void mm(ArrayNode array, double mm) {
    if (Double.isInfinite(mm)) {
      array.addNull();
    } else {
      array.add(new BigDecimal(Decimals.plain(mm)));
    }
  }

  private static void texts(ObjectNode json, String key, List<String> texts) {
    ArrayNode array = json.putArray(key);
    texts.forEach(text -> array.add(clean(text)));
  }

  /** Every line made safe to print; the line breaks between them stay. */
  private static String clean(String text) {
    return Arrays.stream(text.split("\n", -1)).map(Printable::of).collect(Collectors.joining("\n"));
  }
}
