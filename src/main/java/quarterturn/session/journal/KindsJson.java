package quarterturn.session.journal;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.HashMap;
import java.util.Map;
import java.util.Objects;
import quarterturn.unit.Printable;

/**
 * Values of several kinds as JSON objects: one field names the kind, and the kind's own follow.
 *
 * @param <T> what they are kinds of
 */
public final class KindsJson<T> implements ObjectJson<T> {
  private final String field;
  private final Shapes shapes;
  private final Map<String, ObjectJson<T>> byName = new HashMap<>();
  private final Map<Class<?>, String> nameOf = new HashMap<>();

  /**
   * None yet.
   *
   * @param field the name of the field that names the kind
   */
  public KindsJson(String field, Shapes shapes) {
    this.field = field;
    this.shapes = shapes;
  }

  /**
   * These and one more kind.
   *
   * @param fields as {@link Shapes#record} has them
   */
  @SuppressWarnings("unchecked") // only values of the type are written
  public <R extends Record> KindsJson<T> kind(String name, Class<R> type, String fields) {
    byName.put(name, (ObjectJson<T>) shapes.record(type, fields));
    nameOf.put(type, name);
    return this;
  }

  private String nameOf(T value) {
    String name = nameOf.get(value.getClass());
    if (name == null) {
      throw new IllegalStateException("no name for " + value.getClass());
    }
    return name;
  }

  @Override
  public void write(ObjectNode out, T value) {
    String name = nameOf(value);
    out.put(field, name);
    Objects.requireNonNull(byName.get(name)).write(out, value);
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
