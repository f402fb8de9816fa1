package quarterturn.session;

import java.time.Duration;
import java.time.Instant;
import org.jspecify.annotations.Nullable;
import quarterturn.unit.Printable;

/**
 * A task that comes due for an instrument. Its texts are safe to show; {@link Dues} finds it.
 *
 * @param at when it comes due
 * @param why what kind of task it is
 * @param instrument the instrument's name, or the kind's where it has none
 * @param procedure id of the procedure to resume or begin
 * @param session the session it comes from
 * @param what one plain sentence
 * @param since when it became known
 */
public record Due(
    Instant at,
    Why why,
    String instrument,
    String procedure,
    String session,
    String what,
    Instant since) {
  public Due {
    instrument = Printable.of(instrument);
    procedure = Printable.of(procedure);
    session = Printable.of(session);
    what = Printable.of(what);
  }

  /** The kinds of tasks. */
  public enum Why {
    /** An unfinished session that waits until a time. */
    WAIT,
    /** An unfinished session that waits for nothing. */
    OPEN,
    /** A reading a day after the rod was turned, since the neck may have gone on moving. */
    DAY,
    WEEK,
    /** A reading in another season, whose weather may have moved the neck. */
    SEASON;

    /** The constant's word in JSON. */
    public String word() {
      return switch (this) {
        case WAIT -> "wait";
        case OPEN -> "open";
        case DAY -> "day";
        case WEEK -> "week";
        case SEASON -> "season";
      };
    }
  }

  /** This task, so much ahead as it is, counted from another time. */
  public Due known(Instant then) {
    Instant by = then.plus(Duration.between(since, at));
    return new Due(by, why, instrument, procedure, session, what, then);
  }

  /** Whether the task is due at a time. */
  public boolean come(Instant now) {
    return !at.isAfter(now);
  }

  /** The unfinished session to resume, or null where a new one is begun. */
  public @Nullable String resumes() {
    return why == Why.WAIT || why == Why.OPEN ? session : null;
  }

  /** What to type after the program's name, such as "resume 2027-03-01-relief-ab12". */
  public String command() {
    return resumes() == null
        ? "start " + procedure + " --instrument " + instrument
        : "resume " + session;
  }

  /**
   * A text that tells the task from every other and is the same on every run. A wait's has its end
   * in it, since a session may wait several times.
   */
  public String key() {
    String key = session + " " + why.word();
    return why == Why.WAIT ? key + " " + at : key;
  }
}
