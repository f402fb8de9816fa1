package quarterturn.session;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Results;

/**
 * Finds the last reading of each quantity on each string in earlier sessions on an instrument, with
 * the changes made to the instrument since.
 */
public final class PastResults {
  private final Map<String, Event.Before> last = new LinkedHashMap<>();

  private PastResults() {}

  /**
   * The last reading of each quantity on each string.
   *
   * @param before what is known from still earlier sessions
   * @param sessions the events of each session, the oldest session first
   */
  public static List<Event.Before> of(List<Event.Before> before, List<List<Event>> sessions) {
    PastResults past = new PastResults();
    before.forEach(past::put);
    for (List<Event> events : sessions) {
      Corrections.standing(events).forEach(past::take);
      if (PastTurns.open(events) != null) {
        past.changed(Results.ROD);
      }
    }
    return List.copyOf(past.last.values());
  }

  private void take(Event event) {
    if (event instanceof Event.Started started && started.instrument() == null) {
      // Without a name no other session tells of them.
      started.before().forEach(this::put);
    }
    if (event instanceof Event.Read read && !read.missing()) {
      put(
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
    changed(event.changes());
  }

  private void put(Event.Before before) {
    // A session that went on beside another is told after it: its older readings don't count.
    last.merge(
        before.quantity() + "/" + before.string(),
        before,
        (was, is) -> is.at().isBefore(was.at()) ? was : is);
  }

  private void changed(@Nullable String change) {
    if (change != null) {
      last.replaceAll((key, before) -> before.changed(change));
    }
  }
}
