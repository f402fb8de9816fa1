package quarterturn.session;

import java.io.IOException;

/** Where events are kept. When {@code append} returns, the event outlives a crash. */
public interface Ledger {
  void append(Event event) throws IOException;
}
