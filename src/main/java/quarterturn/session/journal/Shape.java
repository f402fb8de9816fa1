package quarterturn.session.journal;

import com.fasterxml.jackson.databind.node.ObjectNode;

/**
 * Writes and reads values of one type as a field's JSON value.
 *
 * @param <T> the type of the values
 */
record Shape<T>(Writer<T> writer, Reader<T> reader) {
  /** Puts a value under a name of an object. */
  interface Writer<T> {
    void write(ObjectNode out, String name, T value);
  }

  /** Reads the value under a name of an object. */
  interface Reader<T> {
    T read(Fields fields, String name) throws NotAnEventException;
  }
}
