package quarterturn.session.listing;

import java.time.Instant;
import java.util.List;
import quarterturn.session.Corrections;
import quarterturn.session.Event;

/**
 * What a session's history needs of it.
 *
 * @param began when it began
 * @param events its readings, and what was asked and told of the rod, as far as that was not
 *     withdrawn, oldest first
 */
public record SessionReadings(Instant began, List<Event> events) {
  public SessionReadings {
    events = List.copyOf(events);
  }

  /** Those of a session with at least one event. */
  public static SessionReadings of(List<Event> events) {
    List<Event> wanted =
        Corrections.standing(events).stream()
            .filter(
                event ->
                    event instanceof Event.Read
                        || event instanceof Event.OnRod
                        || event instanceof Event.Offered
                        || event instanceof Event.UndoAsked)
            .toList();
    return new SessionReadings(events.get(0).at(), wanted);
  }
}
