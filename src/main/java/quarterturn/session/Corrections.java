package quarterturn.session;

import java.util.ArrayList;
import java.util.List;

/** What stands of a session's events once its corrections are taken into account. */
final class Corrections {
  private Corrections() {}

  /**
   * The events that stand, in order. Each {@link Event.Corrected} withdraws the last answer that
   * still stands before it, and with it the turn that was offered or the wait that began on the
   * strength of that answer.
   */
  static List<Event> standing(List<Event> events) {
    List<Event> out = new ArrayList<>();
    for (Event event : events) {
      if (event instanceof Event.Corrected) {
        withdraw(out);
      }
      out.add(event);
    }
    return out;
  }

  private static void withdraw(List<Event> out) {
    for (int i = out.size() - 1; i >= 0; i--) {
      Event event = out.get(i);
      if (event instanceof Event.Offered || event instanceof Event.WaitBegan) {
        out.remove(i);
      } else if (answer(event)) {
        out.remove(i);
        return;
      }
    }
  }

  private static boolean answer(Event event) {
    return event instanceof Event.Told
        || event instanceof Event.Chose
        || event instanceof Event.Read
        || event instanceof Event.Turned
        || event instanceof Event.Waited;
  }
}
