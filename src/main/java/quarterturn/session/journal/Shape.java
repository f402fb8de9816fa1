package quarterturn.session.journal;

import com.fasterxml.jackson.databind.node.ObjectNode;

/**
 * How values of one type stand in a JSON object.
 *
 * @param <T> the type
 */
record Shape<T>(Writer<T> writer, Reader<T> reader) {
  /** Puts a value into an object under a name. */
  interface Writer<T> {
    void write(ObjectNode out, String name, T value);
  }

  /** Reads the value that stands under a name. */
  interface Reader<T> {
    T read(Fields fields, String name) throws NotAnEventException;
  }
}
