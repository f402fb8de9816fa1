package quarterturn.session;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What earlier sessions on an instrument leave: the last reading of each quantity on each string,
 * with the changes made to the instrument since.
 */
final class PastResults {
  private final Map<String, Event.Before> last = new LinkedHashMap<>();

  private PastResults() {}

  /**
   * The readings that are left.
   *
   * @param sessions the events of each, the oldest session first
   */
  static List<Event.Before> of(List<List<Event>> sessions) {
    PastResults past = new PastResults();
    sessions.forEach(events -> Corrections.standing(events).forEach(past::take));
    return List.copyOf(past.last.values());
  }

  private void take(Event event) {
    if (event instanceof Event.Read read && !read.missing()) {
      last.put(
          read.quantity() + "/" + read.string(),
          new Event.Before(
              read.at(),
              read.quantity(),
              read.string(),
              read.bracket(),
              read.value(),
              List.of(),
              read.held(),
              read.readAt()));
    }
    String change = event.changes();
    if (change != null) {
      last.replaceAll((key, before) -> before.changed(change));
    }
  }
}
