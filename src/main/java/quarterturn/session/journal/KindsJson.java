package quarterturn.session.journal;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.HashMap;
import java.util.Map;
import java.util.Objects;
import quarterturn.unit.Printable;

/**
 * Writes values of several kinds as JSON objects: the time, if they have one, a field that names
 * the kind, and the kind's own fields.
 *
 * @param <T> the type of the values
 */
public final class KindsJson<T> implements ObjectJson<T> {
  private static final String AT = "at";

  private final String field;
  private final Shapes shapes;
  private final Map<String, ObjectJson<T>> byName = new HashMap<>();
  private final Map<Class<?>, String> nameOf = new HashMap<>();

  /**
   * A mapping without any kinds.
   *
   * @param field the name of the field that names the kind
   */
  public KindsJson(String field, Shapes shapes) {
    this.field = field;
    this.shapes = shapes;
  }

  /**
   * This mapping with one more kind.
   *
   * @param fields the fields as for {@link Shapes#record}
   */
  @SuppressWarnings("unchecked") // only values of the type are written
  public <R extends Record> KindsJson<T> kind(String name, Class<R> type, String fields) {
    byName.put(name, (ObjectJson<T>) shapes.record(type, fields));
    nameOf.put(type, name);
    return this;
  }

  @Override
  public void write(ObjectNode out, T value) {
    String name = nameOf.get(value.getClass());
    if (name == null) {
      throw new IllegalStateException("no name for " + value.getClass());
    }
    ObjectNode fields = Objects.requireNonNull(byName.get(name)).write(value);
    if (fields.has(AT)) {
      out.set(AT, fields.get(AT));
    }
    out.put(field, name).setAll(fields);
  }

  @Override
  public T read(Fields fields) throws NotAnEventException {
    String name = fields.text(field);
    ObjectJson<T> kind = byName.get(name);
    if (kind == null) {
      throw new NotAnEventException("its " + field + " \"" + Printable.of(name) + "\" is unknown");
    }
    return kind.read(fields);
  }
}
