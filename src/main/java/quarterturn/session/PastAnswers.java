package quarterturn.session;

import java.time.Instant;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Library;
import quarterturn.procedure.Recorded;

/** Finds what earlier sessions on an instrument were told of how it is made. */
public final class PastAnswers {
  /** Id of the question whether what is on record is still so. */
  public static final String AS_RECORDED = "as-recorded";

  private PastAnswers() {}

  /** What an answer is about that was given without being asked for; null for any other id. */
  public static @Nullable Recorded differing(String step) {
    return Stream.of(Recorded.values())
        .filter(what -> step.equals(AS_RECORDED + "/" + what.word()))
        .findFirst()
        .orElse(null);
  }

  /**
   * The last answer to each question about how the instrument is made.
   *
   * @param before what is known from still earlier sessions
   * @param sessions the events of each session, the oldest session first
   * @param library whose steps tell which questions these are
   */
  public static List<Event.Known> of(
      List<Event.Known> before, List<List<Event>> sessions, Library library) {
    Map<Recorded, Event.Known> last = new EnumMap<>(Recorded.class);
    before.forEach(known -> last.put(known.what(), known));
    standing(sessions)
        .forEach(
            event -> {
              if (event instanceof Event.Chose chose) {
                keep(last, recorded(library, chose.step()), chose.at(), chose.option());
              } else if (event instanceof Event.Noted noted && !noted.text().equals("-")) {
                keep(last, recorded(library, noted.step()), noted.at(), noted.text());
              }
            });
    return List.copyOf(last.values());
  }

  private static void keep(
      Map<Recorded, Event.Known> last, Stream<Recorded> about, Instant at, String answer) {
    about
        .filter(what -> what.names(answer) || what.gauges())
        // The strings that went on are those that are on from then.
        .map(what -> what.gauges() ? Recorded.GAUGES : what)
        .findFirst()
        .ifPresent(
            what ->
                last.merge(
                    what,
                    new Event.Known(at, what, answer),
                    (was, is) -> is.at().isBefore(was.at()) ? was : is));
  }

  private static Stream<Recorded> recorded(Library library, String step) {
    Recorded differing = differing(step);
    return differing != null
        ? Stream.of(differing)
        : library.procedures().values().stream()
            .flatMap(procedure -> Stream.ofNullable(procedure.steps().get(step)))
            .flatMap(one -> Stream.ofNullable(one.records()));
  }

  private static Stream<Event> standing(List<List<Event>> sessions) {
    return sessions.stream().flatMap(events -> Corrections.standing(events).stream());
  }
}
