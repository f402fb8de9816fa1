package quarterturn.session.engine;

import java.time.Instant;
import quarterturn.procedure.kind.Quantity;
import quarterturn.session.Event;

/**
 * A reading taken in the session.
 *
 * @param read the reading's event
 * @param counts whether the strings were at pitch and the neck settled when it was taken
 * @param turnsBefore how many rod turns had been made in this session
 * @param changesBefore how many changes had been made to the instrument in this session
 */
record Reading(Event.Read read, boolean counts, int turnsBefore, int changesBefore) {
  Instant at() {
    return read.at();
  }

  boolean relief() {
    return read.quantity() == Quantity.RELIEF && read.bracket() != null;
  }
}
