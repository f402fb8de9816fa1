package quarterturn.session;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import quarterturn.procedure.Library;
import quarterturn.procedure.Recorded;

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
        recorded(library, chose.step())
            .filter(what -> what.names(chose.option()))
            .findFirst()
            .ifPresent(what -> last.put(what, new Event.Known(chose.at(), what, chose.option())));
      } else if (event instanceof Event.Noted noted && !noted.text().equals("-")) {
        // The strings that went on are those that are on from then.
        recorded(library, noted.step())
            .filter(Recorded::gauges)
            .findFirst()
            .ifPresent(
                what ->
                    last.put(
                        Recorded.GAUGES,
                        new Event.Known(noted.at(), Recorded.GAUGES, noted.text())));
      }
    }
    return List.copyOf(last.values());
  }

  private static Stream<Recorded> recorded(Library library, String step) {
    return library.procedures().values().stream()
        .flatMap(procedure -> Stream.ofNullable(procedure.steps().get(step)))
        .flatMap(one -> Stream.ofNullable(one.records()));
  }

  private static Stream<Event> standing(List<List<Event>> sessions) {
    return sessions.stream().flatMap(events -> Corrections.standing(events).stream());
  }
}
