package quarterturn.session.journal;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;

/**
 * How values of one type stand in a JSON object.
 *
 * @param <T> the type
 */
public interface ObjectJson<T> {
  /** Puts a value's fields into an object. */
  void write(ObjectNode out, T value);

  /**
   * The value whose fields these are; fields that it does not ask for are let be.
   *
   * @throws NotAnEventException naming a field that is unknown, missing or of the wrong kind
   */
  T read(Fields fields) throws NotAnEventException;

  /** A value as an object of its own. */
  default ObjectNode write(T value) {
    ObjectNode out = JsonNodeFactory.instance.objectNode();
    write(out, value);
    return out;
  }

  /**
   * The value that an object stands for, which has no other fields.
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
