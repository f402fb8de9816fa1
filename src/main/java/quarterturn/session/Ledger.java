package quarterturn.session;

import java.io.IOException;
import java.util.List;

/** Where events are kept. */
public interface Ledger {
  /**
   * All of them or none: they outlive a crash when this returns, and are not kept when it throws.
   */
  void append(List<Event> events) throws IOException;
}
