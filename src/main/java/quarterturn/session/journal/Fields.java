package quarterturn.session.journal;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import quarterturn.unit.Bracket;
import quarterturn.unit.Printable;

/**
 * The fields of one JSON object, each read by name and type. A field that is missing, has the wrong
 * type or is never read is an error that names it.
 */
public final class Fields {
  private final JsonNode node;
  private final Set<String> asked = new HashSet<>();

  public Fields(JsonNode node) throws NotAnEventException {
    if (!node.isObject()) {
      throw new NotAnEventException("it is no JSON object");
    }
    this.node = node;
  }

  public String text(String name) throws NotAnEventException {
    JsonNode value = required(name);
    if (!value.isTextual()) {
      throw wrong(name, "text");
    }
    return value.textValue();
  }

  public @Nullable String textOrNull(String name) throws NotAnEventException {
    return has(name) ? text(name) : null;
  }

  /** A field's text, or the text of a number without quotes, or null. */
  public @Nullable String amountOrNull(String name) throws NotAnEventException {
    return has(name) && required(name).isNumber() ? required(name).asText() : textOrNull(name);
  }

  /** The fields of an object under a name, or null. */
  public @Nullable Fields fieldsOrNull(String name) throws NotAnEventException {
    if (!has(name)) {
      return null;
    }
    if (!required(name).isObject()) {
      throw wrong(name, "a group of named values");
    }
    return new Fields(required(name));
  }

  public int whole(String name) throws NotAnEventException {
    JsonNode value = required(name);
    if (!value.isInt()) {
      throw wrong(name, "a whole number");
    }
    return value.intValue();
  }

  public @Nullable Integer wholeOrNull(String name) throws NotAnEventException {
    return has(name) ? (Integer) whole(name) : null;
  }

  public double number(String name) throws NotAnEventException {
    return number(name, required(name));
  }

  public boolean yesOrNo(String name) throws NotAnEventException {
    JsonNode value = required(name);
    if (!value.isBoolean()) {
      throw wrong(name, "true or false");
    }
    return value.booleanValue();
  }

  public Instant instant(String name) throws NotAnEventException {
    try {
      return Instant.parse(text(name));
    } catch (DateTimeException e) {
      throw wrong(name, "a time such as 2027-03-01T09:30:00Z");
    }
  }

  /** The value of an enum whose word is under a name. */
  public <T> T word(String name, T[] values, Function<T, String> word) throws NotAnEventException {
    String text = text(name);
    for (T value : values) {
      if (word.apply(value).equals(text)) {
        return value;
      }
    }
    throw wrong(name, "a known word, and not \"" + Printable.of(text) + "\"");
  }

  public <T> @Nullable T wordOrNull(String name, T[] values, Function<T, String> word)
      throws NotAnEventException {
    return has(name) ? word(name, values, word) : null;
  }

  /** A bracket from two bounds in millimetres, null for an open one. */
  public Bracket bracket(String name) throws NotAnEventException {
    JsonNode pair = required(name);
    if (!pair.isArray() || pair.size() != 2) {
      throw wrong(name, "two bounds");
    }
    JsonNode low = pair.get(0);
    JsonNode high = pair.get(1);
    return new Bracket(
        low.isNull() ? Double.NEGATIVE_INFINITY : number(name, low),
        high.isNull() ? Double.POSITIVE_INFINITY : number(name, high));
  }

  public List<Integer> wholes(String name) throws NotAnEventException {
    return list(name, "whole numbers", JsonNode::isInt, JsonNode::intValue);
  }

  public List<Double> numbers(String name) throws NotAnEventException {
    return list(name, "numbers", JsonNode::isNumber, JsonNode::doubleValue);
  }

  public List<String> texts(String name) throws NotAnEventException {
    return list(name, "words", JsonNode::isTextual, JsonNode::textValue);
  }

  private <T> List<T> list(
      String name, String wanted, Predicate<JsonNode> fits, Function<JsonNode, T> value)
      throws NotAnEventException {
    List<T> out = new ArrayList<>();
    for (JsonNode item : list(name)) {
      if (!fits.test(item)) {
        throw wrong(name, "a list of " + wanted);
      }
      out.add(value.apply(item));
    }
    return out;
  }

  /** A list of values, each written as an object. */
  public <T> List<T> list(String name, ObjectJson<T> json) throws NotAnEventException {
    List<T> out = new ArrayList<>();
    for (JsonNode item : list(name)) {
      out.add(json.read(item));
    }
    return out;
  }

  private JsonNode list(String name) throws NotAnEventException {
    JsonNode value = required(name);
    if (!value.isArray()) {
      throw wrong(name, "a list");
    }
    return value;
  }

  /**
   * Checks that every field was read, since an unknown one may mean something. To be called last.
   */
  public void nothingElse() throws NotAnEventException {
    for (String name : (Iterable<String>) node::fieldNames) {
      if (!asked.contains(name)) {
        throw new NotAnEventException("it has an unknown field \"" + Printable.of(name) + "\"");
      }
    }
  }

  /** The JSON object under a name. */
  public JsonNode object(String name) throws NotAnEventException {
    JsonNode mapping = required(name);
    if (!mapping.isObject()) {
      throw wrong(name, "a mapping");
    }
    return mapping;
  }

  public boolean has(String name) {
    asked.add(name);
    return node.has(name);
  }

  private JsonNode required(String name) throws NotAnEventException {
    asked.add(name);
    JsonNode value = node.get(name);
    if (value == null) {
      throw new NotAnEventException("its field \"" + name + "\" is missing");
    }
    return value;
  }

  private static double number(String name, JsonNode value) throws NotAnEventException {
    if (!value.isNumber() || !Double.isFinite(value.doubleValue())) {
      throw wrong(name, "a number");
    }
    return value.doubleValue();
  }

  private static NotAnEventException wrong(String name, String wanted) {
    return new NotAnEventException("its field \"" + name + "\" must be " + wanted);
  }
}
