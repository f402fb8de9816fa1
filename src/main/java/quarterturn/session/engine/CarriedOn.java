package quarterturn.session.engine;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.kind.Style;
import quarterturn.session.Corrections;
import quarterturn.session.Event;
import quarterturn.session.PastTurns;
import quarterturn.session.RecordMismatchException;

/**
 * The data that an unfinished session leaves to the one that replaces it, where the procedure was
 * changed so that the first can't be resumed. A turn that was asked for when it was left counts as
 * made, as it does everywhere between sessions.
 *
 * @param session the first session's name
 * @param started the first session's start
 * @param kind as named at the start or chosen later, or null
 * @param style as named at the start or chosen later, or null
 * @param last when its last event happened
 * @param standing how the instrument was left, in words
 * @param elsewhere turns made on the neck since it began, in it and in other sessions, oldest first
 */
public record CarriedOn(
    String session,
    Event.Started started,
    @Nullable String kind,
    @Nullable Style style,
    Instant last,
    String standing,
    List<Event.Past> elsewhere) {
  private static final String OUTCOME = "procedure-changed";

  /**
   * Collects the data that a session leaves.
   *
   * @param events all of the session's events
   * @param others turns made on the same neck in other sessions since it began
   * @throws RecordMismatchException where the session has ended, so that there is nothing to resume
   */
  public static CarriedOn of(String session, List<Event> events, List<Event.Past> others) {
    Event last = events.get(events.size() - 1);
    if (last instanceof Event.Ended) {
      throw new RecordMismatchException("this session has ended");
    }
    Event.Started started = (Event.Started) events.get(0);
    String kind = started.kind();
    Style style = started.style();
    for (Event event : Corrections.standing(events)) {
      if (event instanceof Event.Chose chose && chose.step().equals(EngineQuestions.KIND)) {
        kind = chose.option();
      }
      if (event instanceof Event.Chose chose && chose.step().equals(EngineQuestions.STYLE)) {
        style = Style.valueOf(chose.option().toUpperCase(Locale.ROOT));
      }
    }
    List<Event.Past> turns = new ArrayList<>(others);
    turns.addAll(PastTurns.of(events));
    turns.sort(Comparator.comparing(Event.Past::at));
    return new CarriedOn(session, started, kind, style, last.at(), Standing.of(events), turns);
  }

  /** The first events of the session that replaces the first one, as after a break. */
  public List<Event> beginning(Event.Started anew) {
    String left =
        standing
            + ". The procedure was changed since session "
            + session
            + " began, so its work begins anew here, and its turns count";
    return List.of(
        anew, new Event.Left(last, left), new Event.Resumed(anew.at(), elsewhere, anew.carried()));
  }

  /**
   * The event that ends the first session.
   *
   * @param by the name of the session that replaces it
   */
  public Event.Ended ended(String by, Instant now) {
    String why = "The procedure was changed; session " + by + " goes on in its place.";
    return new Event.Ended(
        now.isBefore(last) ? last : now, EngineQuestions.RESUME, false, OUTCOME, why);
  }
}
