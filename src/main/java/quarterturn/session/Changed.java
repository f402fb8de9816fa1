package quarterturn.session;

import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A change made to the instrument in this session.
 *
 * @param change id of the change in the matrix of results
 * @param strings notes of the strings that it was made on, where it concerns no other; else empty
 */
public record Changed(Instant at, String change, List<String> strings) {
  public Changed {
    strings = List.copyOf(strings);
  }

  /** One that concerns every string. */
  public Changed(Instant at, String change) {
    this(at, change, List.of());
  }

  public boolean concerns(@Nullable String string) {
    return strings.isEmpty() || string == null || strings.contains(string);
  }
}
