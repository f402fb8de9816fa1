package quarterturn.session.journal;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;

/**
 * Writes and reads values of one type as JSON objects.
 *
 * @param <T> the type of the values
 */
public interface ObjectJson<T> {
  /** Puts a value's fields into an object. */
  void write(ObjectNode out, T value);

  /**
   * The value with these fields; fields that it does not read are ignored.
   *
   * @throws NotAnEventException naming a field that is unknown, missing or of the wrong kind
   */
  T read(Fields fields) throws NotAnEventException;

  /** A value as a new JSON object. */
  default ObjectNode write(T value) {
    ObjectNode out = JsonNodeFactory.instance.objectNode();
    write(out, value);
    return out;
  }

  /**
   * The value of a JSON object that has no fields but its own.
   *
   * @throws NotAnEventException naming a field that is unknown, missing or of the wrong kind
   */
  default T read(JsonNode object) throws NotAnEventException {
    Fields fields = new Fields(object);
    try {
      T value = read(fields);
      fields.nothingElse();
      return value;
    } catch (IllegalArgumentException e) {
      // A bracket, a turn or a reference that its own record refuses.
      throw new NotAnEventException(String.valueOf(e.getMessage()));
    }
  }
}
