package quarterturn.report;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import quarterturn.session.Event;

/** Which events still count once corrections are taken into account. */
final class Upheld {
  private Upheld() {}

  /** {@code events} without the corrections and without the answers they withdraw. */
  static List<Event> of(List<Event> events) {
    List<Event> upheld = new ArrayList<>();
    for (Event event : events) {
      if (event instanceof Event.Corrected) {
        Event gone = withdrawn(upheld);
        if (gone != null) {
          upheld.remove(upheld.lastIndexOf(gone));
        }
      } else {
        upheld.add(event);
      }
    }
    return upheld;
  }

  /** The answer that a correction takes back: the last one before it that still counts, or null. */
  static @Nullable Event withdrawn(List<Event> before) {
    for (int i = before.size() - 1; i >= 0; i--) {
      if (answer(before.get(i))) {
        return before.get(i);
      }
    }
    return null;
  }

  private static boolean answer(Event event) {
    return event instanceof Event.Told
        || event instanceof Event.Chose
        || event instanceof Event.Read
        || event instanceof Event.Turned
        || event instanceof Event.Waited;
  }
}
