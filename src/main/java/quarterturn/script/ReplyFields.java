package quarterturn.script;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.Iterator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import quarterturn.unit.Printable;

/** The fields of one line that is a JSON object, each checked for its type. */
final class ReplyFields {
  private static final ObjectMapper JSON =
      JsonMapper.builder()
          .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
          .enable(DeserializationFeature.FAIL_ON_READING_DUP_TREE_KEY)
          .build();
  private static final Instant FIRST = Instant.parse("1970-01-01T00:00:00Z");
  private static final Instant LAST = Instant.parse("9000-01-01T00:00:00Z");

  private final ObjectNode object;

  private ReplyFields(ObjectNode object) {
    this.object = object;
  }

  static ReplyFields parse(String line) {
    ObjectNode object = object(line);
    if (object.isEmpty()) {
      throw new BadAnswerException("an object without an answer");
    }
    return new ReplyFields(object);
  }

  /** One line as a JSON object, with its fields unchecked. */
  static ObjectNode object(String line) {
    JsonNode node;
    try {
      node = JSON.readTree(line);
    } catch (JsonProcessingException e) {
      throw new BadAnswerException("not JSON: " + shown(e.getOriginalMessage()));
    }
    if (!(node instanceof ObjectNode object)) {
      throw new BadAnswerException("not a JSON object");
    }
    return object;
  }

  /** Input with unprintable characters replaced, cut short for an error message. */
  static String shown(String text) {
    String safe = Printable.of(text);
    int end = safe.offsetByCodePoints(0, Math.min(120, safe.codePointCount(0, safe.length())));
    return end < safe.length() ? safe.substring(0, end) + "..." : safe;
  }

  /** These fields, checked to have no keys but those of {@code known} and {@code at}. */
  ReplyFields only(String... known) {
    for (Iterator<String> keys = object.fieldNames(); keys.hasNext(); ) {
      String key = keys.next();
      if (!List.of(known).contains(key) && !key.equals("at")) {
        throw new BadAnswerException("the key \"" + shown(key) + "\" is not taken here");
      }
    }
    return this;
  }

  boolean has(String key) {
    return object.has(key);
  }

  /** The text under {@code key}, or an empty text where there is none. */
  String word(String key) {
    return object.path(key).isTextual() ? object.path(key).textValue() : "";
  }

  boolean isNumber(String key) {
    return object.path(key).isNumber();
  }

  boolean isTrue(String key) {
    return object.path(key).booleanValue();
  }

  /** The text under {@code key}; an error where there is none. */
  String text(String key) {
    JsonNode node = object.path(key);
    if (!node.isTextual()) {
      throw new BadAnswerException("\"" + key + "\" must be a text");
    }
    return node.textValue();
  }

  /** The number under {@code key}; an error where there is none or it is not finite. */
  double number(String key) {
    JsonNode node = object.path(key);
    if (!node.isNumber() || !Double.isFinite(node.doubleValue())) {
      throw new BadAnswerException("\"" + key + "\" must be a number");
    }
    return node.doubleValue();
  }

  /** The time under "at", or null where there is none. */
  @Nullable Instant at() {
    if (!has("at")) {
      return null;
    }
    String typed = text("at");
    try {
      Instant at = Instant.parse(typed);
      if (!at.isBefore(FIRST) && at.isBefore(LAST)) {
        return at;
      }
    } catch (DateTimeException e) {
      // told below, in the same words as a time out of range
    }
    throw new BadAnswerException(
        "\"at\" must be a time like 2027-03-01T10:00:00Z, not \"" + shown(typed) + "\"");
  }
}
