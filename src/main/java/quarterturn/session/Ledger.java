package quarterturn.session;

import java.io.IOException;
import java.util.List;

/** A place where a session's events are recorded. */
public interface Ledger {
  /**
   * Records events, all or none: they are on disk when this returns, and none is when it throws.
   */
  void append(List<Event> events) throws IOException;
}
