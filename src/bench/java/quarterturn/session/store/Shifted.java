package quarterturn.session.store;

import java.lang.reflect.RecordComponent;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;
import quarterturn.session.Event;

/** Events as they would stand in a record at another time. */
final class Shifted {
  private Shifted() {}

  static List<Event> by(Duration time, List<Event> events) {
    return events.stream().map(event -> (Event) of(event, time)).toList();
  }

  /** Every record of events is data through and through, so every time in it moves alike. */
  private static Object of(Object value, Duration time) {
    if (value instanceof Instant at) {
      return at.plus(time);
    }
    if (value instanceof List<?> list) {
      return list.stream().map(one -> of(one, time)).toList();
    }
    if (!(value instanceof Event)) {
      return value;
    }
    try {
      RecordComponent[] parts = value.getClass().getRecordComponents();
      Class<?>[] types = new Class<?>[parts.length];
      @Nullable Object[] values = new @Nullable Object[parts.length];
      for (int i = 0; i < parts.length; i++) {
        types[i] = parts[i].getType();
        Object was = parts[i].getAccessor().invoke(value);
        values[i] = was == null ? null : of(was, time);
      }
      return value.getClass().getDeclaredConstructor(types).newInstance(values);
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException(e);
    }
  }
}
