package quarterturn.session.journal;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.Type;
import java.time.Instant;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import quarterturn.unit.Bracket;
import quarterturn.unit.Turn;

/**
 * The JSON of values, by their types: enums as their words, instants as ISO 8601, turns as numbers,
 * brackets as two bounds in millimetres with null for an open one.
 */
public final class Shapes {
  private static final JsonNodeFactory JSON = JsonNodeFactory.instance;
  private final Map<Type, Shape<?>> shapes = new HashMap<>();
  private final Map<Type, Shape<?>> lists = new HashMap<>();

  public Shapes() {
    one(String.class, JSON::textNode, Fields::text);
    one(int.class, JSON::numberNode, Fields::whole);
    one(Integer.class, JSON::numberNode, Fields::whole);
    one(double.class, Shapes::finite, Fields::number);
    one(Double.class, Shapes::finite, Fields::number);
    one(boolean.class, JSON::booleanNode, Fields::yesOrNo);
    one(Boolean.class, JSON::booleanNode, Fields::yesOrNo);
    one(Instant.class, at -> JSON.textNode(at.toString()), Fields::instant);
    one(Turn.class, turn -> JSON.numberNode(turn.turns()), (f, name) -> new Turn(f.number(name)));
    one(Bracket.class, Shapes::bracket, Fields::bracket);
    many(String.class, JSON::textNode, Fields::texts);
    many(Integer.class, JSON::numberNode, Fields::wholes);
    many(Double.class, Shapes::finite, Fields::numbers);
  }

  /** Adds an enum whose values are written as their words. */
  public <E extends Enum<E>> Shapes words(Class<E> type, Function<E, String> word) {
    one(
        type,
        value -> JSON.textNode(word.apply(value)),
        (f, name) -> f.word(name, type.getEnumConstants(), word));
    return this;
  }

  /** Adds a type whose values are written as text. */
  public <T> void text(Class<T> type, Function<String, T> parse) {
    one(type, value -> JSON.textNode(value.toString()), (f, name) -> parse.apply(f.text(name)));
  }

  /** Adds a type whose values are written as objects, alone and in lists. */
  public <T> void object(Class<T> type, ObjectJson<T> json) {
    one(type, json::write, (f, name) -> json.read(f.object(name)));
    many(type, json::write, (f, name) -> f.list(name, json));
  }

  /**
   * Adds a type whose fields are written among those of the object it belongs to, without its own
   * name.
   */
  public <T> void inline(Class<T> type, ObjectJson<T> json) {
    shapes.put(
        type,
        new Shape<T>((out, name, value) -> json.write(out, value), (f, name) -> json.read(f)));
  }

  /**
   * The mapping of a record to an object.
   *
   * @param fields the names of the fields, in the order of the components; with a question mark
   *     where null or an empty list is left out. Fewer names than components may be given where a
   *     constructor takes just these.
   */
  public <R extends Record> ObjectJson<R> record(Class<R> type, String fields) {
    return new RecordJson<>(type, fields, this);
  }

  <T> void one(Type type, Function<? super T, JsonNode> write, Shape.Reader<T> read) {
    shapes.put(type, under(write, read));
  }

  private <T> void many(
      Class<T> type, Function<? super T, JsonNode> write, Shape.Reader<List<T>> read) {
    lists.put(type, under(values -> list(values, write), read));
  }

  private static <T> Shape<T> under(Function<? super T, JsonNode> node, Shape.Reader<T> read) {
    return new Shape<>((out, name, value) -> out.set(name, node.apply(value)), read);
  }

  static <T> JsonNode list(Collection<T> values, Function<? super T, JsonNode> write) {
    ArrayNode list = JSON.arrayNode();
    values.forEach(value -> list.add(write.apply(value)));
    return list;
  }

  /** The mapping of a type. */
  @SuppressWarnings("unchecked") // put in by their own types
  Shape<Object> of(Type type) {
    Shape<?> shape =
        type instanceof ParameterizedType of && of.getRawType() == List.class
            ? lists.get(of.getActualTypeArguments()[0])
            : shapes.get(type);
    if (shape == null) {
      throw new IllegalArgumentException("nothing says how a " + type + " stands in JSON");
    }
    return (Shape<Object>) shape;
  }

  /** A number, checked to be finite, since JSON can't express infinity. */
  private static JsonNode finite(double value) {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException("a reading must be a finite number, not " + value);
    }
    return JSON.numberNode(value);
  }

  private static JsonNode bracket(Bracket bracket) {
    return JSON.arrayNode()
        .add(bracket.noGap() ? JSON.nullNode() : JSON.numberNode(bracket.lowMm()))
        .add(bracket.beyondGauge() ? JSON.nullNode() : JSON.numberNode(bracket.highMm()));
  }
}
