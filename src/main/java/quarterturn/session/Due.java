package quarterturn.session;

import java.time.Instant;
import org.jspecify.annotations.Nullable;
import quarterturn.unit.Printable;

/**
 * Something to come for an instrument. The texts are safe to show; what is due is found by {@link
 * Dues}.
 *
 * @param at when it is due
 * @param why what makes it due
 * @param instrument the instrument's name, or the kind's where it has none
 * @param procedure what is gone on with, or begun
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

  /** What makes something due. */
  public enum Why {
    /** An unfinished session waits until then. */
    WAIT,
    /** An unfinished session waits for nothing. */
    OPEN,
    /** The neck may have gone on moving since the rod was turned. */
    DAY,
    WEEK,
    /** The weather of another season may have moved the neck. */
    SEASON;

    /** A small word for it, as in JSON. */
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

  /** Whether its time has come. */
  public boolean come(Instant now) {
    return !at.isAfter(now);
  }

  /** The unfinished session to take up, or null where a new one is begun. */
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
   * What tells it from every other, the same on every run. A wait has its end in it, since a
   * session may wait several times.
   */
  public String key() {
    String key = session + " " + why.word();
    return why == Why.WAIT ? key + " " + at : key;
  }
}
