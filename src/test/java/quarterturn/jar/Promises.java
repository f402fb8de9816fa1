package quarterturn.jar;

import static com.google.common.truth.Truth.assertWithMessage;

import java.util.List;
import quarterturn.procedure.kind.Quantity;
import quarterturn.session.Event;

/**
 * What a record must keep to, however often the program was broken off: our policy on common
 * practice, no source.
 */
final class Promises {
  private static final double MOST = 0.25;

  private Promises() {}

  /** No turn above a quarter; before each turn strings at pitch, settled, and a reading since. */
  static void kept(List<Event> events) {
    boolean tuned = false;
    boolean settled = false;
    boolean read = false;
    for (Event event : events) {
      if (event instanceof Event.Told told && isTuning(told.step())) {
        tuned = true;
        settled = false;
      } else if (event instanceof Event.Waited) {
        settled = tuned;
      } else if (event instanceof Event.Read r && r.quantity() == Quantity.RELIEF && !r.missing()) {
        read = settled;
      } else if (event instanceof Event.Resumed) {
        read = false;
      } else if (event instanceof Event.Offered offered) {
        assertWithMessage("turn asked for").that(offered.turn().size().turns()).isAtMost(MOST);
        assertWithMessage("a reading before %s", offered).that(read).isTrue();
      } else if (event instanceof Event.Turned || event instanceof Event.Recalled) {
        tuned = false;
        settled = false;
        read = false;
      }
    }
  }

  private static boolean isTuning(String step) {
    return List.of("tune", "retune", "tune-again").contains(step);
  }

  /** How many turns of the rod the record knows. */
  static long turns(List<Event> events) {
    return events.stream()
        .filter(
            e ->
                (e instanceof Event.Turned t && t.turn().turns() != 0)
                    || (e instanceof Event.Recalled r && r.turned().turns() != 0))
        .count();
  }

  /** Whether a turn was shown and nothing was said about it since. */
  static boolean insideATurn(List<Event> events) {
    boolean open = false;
    for (Event event : events) {
      open =
          event instanceof Event.Offered
              || (open && !(event instanceof Event.Turned || event instanceof Event.Recalled));
    }
    return open;
  }
}
