package quarterturn.session.journal;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Writes a record as fields of a JSON object, one for each component. */
final class RecordJson<R extends Record> implements ObjectJson<R> {
  private final List<Part> parts;
  private final Constructor<R> constructor;

  /**
   * A component of the record.
   *
   * @param optional whether the field is left out for null or an empty list
   */
  private record Part(String name, boolean optional, Method component, Shape<Object> shape) {
    void write(ObjectNode out, Object record) {
      Object value = made(() -> component.invoke(record));
      if (value != null && !(optional && List.of().equals(value))) {
        shape.writer().write(out, name, value);
      }
    }

    @Nullable Object read(Fields fields) throws NotAnEventException {
      if (optional && !fields.has(name)) {
        return component.getReturnType() == List.class ? List.of() : null;
      }
      return shape.reader().read(fields, name);
    }
  }

  private interface Reflected<T> {
    T made() throws ReflectiveOperationException;
  }

  /** A mapping of a record type; see {@link Shapes#record}. */
  RecordJson(Class<R> type, String fields, Shapes shapes) {
    String[] names = fields.isEmpty() ? new String[0] : fields.split(" ");
    var components = Arrays.asList(type.getRecordComponents()).subList(0, names.length);
    Class<?>[] types = components.stream().map(c -> c.getType()).toArray(Class<?>[]::new);
    constructor = made(() -> type.getDeclaredConstructor(types));
    constructor.setAccessible(true);
    parts = new ArrayList<>();
    for (int i = 0; i < names.length; i++) {
      Method component = components.get(i).getAccessor();
      component.setAccessible(true);
      Shape<Object> shape = shapes.of(component.getGenericReturnType());
      String name = names[i].replace("?", "");
      parts.add(new Part(name, names[i].endsWith("?"), component, shape));
    }
  }

  @Override
  public void write(ObjectNode out, R record) {
    parts.forEach(part -> part.write(out, record));
  }

  @Override
  public R read(Fields fields) throws NotAnEventException {
    @Nullable Object[] values = new @Nullable Object[parts.size()];
    for (int i = 0; i < values.length; i++) {
      values[i] = parts.get(i).read(fields);
    }
    return made(() -> constructor.newInstance(values));
  }

  /**
   * Makes a value by reflection; an exception of the record's own constructor is thrown as it is.
   */
  private static <T> T made(Reflected<T> reflected) {
    try {
      return reflected.made();
    } catch (InvocationTargetException e) {
      if (e.getCause() instanceof IllegalArgumentException refused) {
        throw refused;
      }
      throw new IllegalStateException(e);
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException(e);
    }
  }
}
