package quarterturn.session;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import quarterturn.procedure.Library;
import quarterturn.procedure.Recorded;
import quarterturn.procedure.Step;

/** Finds what earlier sessions on an instrument were told of how it is made. */
public final class PastAnswers {
  private PastAnswers() {}

  /**
   * The last answer to each question about how the instrument is made.
   *
   * @param sessions the events of each session, the oldest session first
   * @param library whose steps tell which questions these are
   */
  public static List<Event.Known> of(List<List<Event>> sessions, Library library) {
    Map<Recorded, Event.Known> last = new EnumMap<>(Recorded.class);
    for (Event event : standing(sessions).toList()) {
      if (event instanceof Event.Chose chose) {
        library.procedures().values().stream()
            .map(procedure -> procedure.steps().get(chose.step()))
            .filter(Step.Choose.class::isInstance)
            .map(Step::records)
            .filter(what -> what != null && what.names(chose.option()))
            .findFirst()
            .ifPresent(what -> last.put(what, new Event.Known(chose.at(), what, chose.option())));
      }
    }
    return List.copyOf(last.values());
  }

  private static Stream<Event> standing(List<List<Event>> sessions) {
    return sessions.stream().flatMap(events -> Corrections.standing(events).stream());
  }
}
