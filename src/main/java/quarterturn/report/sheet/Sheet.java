package quarterturn.report.sheet;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import quarterturn.craft.Window;
import quarterturn.procedure.Library;
import quarterturn.procedure.condition.Feel;
import quarterturn.procedure.condition.Role;
import quarterturn.procedure.condition.Verdict;
import quarterturn.procedure.kind.Quantity;
import quarterturn.procedure.kind.Style;
import quarterturn.session.Event;
import quarterturn.session.Overview;
import quarterturn.unit.Turn;

/**
 * The set-up sheet: what a session found, did and left, for a customer. Texts are as typed; each
 * format escapes them in its own way.
 *
 * @param rows as found and as left, one for each quantity, string and convention
 * @param played the play test as found and as left, or null where none is on record
 * @param settings saddles and pickups that were set
 * @param readings every reading that stands, oldest first
 * @param findings choices made, without kind, style and strings
 * @param open work that is still to be done
 * @param care how it is kept from now on; empty unless it was set up
 * @param next when to read the instrument again; empty where a repairer decides
 * @param standing the state the instrument was last left in, where the session has not ended; else
 *     null
 */
public record Sheet(
    Heading heading,
    @Nullable String complaint,
    List<Remark> notes,
    List<Remark> strings,
    List<Remark> findings,
    List<Row> rows,
    @Nullable Played played,
    Rod rod,
    List<Event.Adjusted> settings,
    List<Pause> waits,
    List<Remark> hazards,
    List<Taken> readings,
    List<String> open,
    Event.@Nullable Ended ended,
    @Nullable String standing,
    List<String> care,
    List<Again> next) {
  /** Sentences on what a sheet does not do, the last part of every sheet. */
  public static final List<String> LIMITS =
      List.of(
          "It does not replace a qualified repairer.",
          "Readings are those of the person at the bench, with the gauges at hand.",
          "A range holds for its own way of reading only; it is a starting point, and the player"
              + " and the state of the frets decide.");

  /**
   * The sheet of a session.
   *
   * @param session the session's name
   * @param events oldest first
   * @param library the library for labels, kinds, effects of changes and re-checks; a procedure may
   *     be missing
   */
  public static Sheet of(String session, List<Event> events, Library library) {
    return of(session, events, library, library);
  }

  /**
   * The sheet of a session whose procedures may be gone from the user's own library.
   *
   * @param session the session's name
   * @param events oldest first
   * @param library the user's library at present
   * @param shipped the program's own library, for what the steps of a missing procedure record
   */
  public static Sheet of(String session, List<Event> events, Library library, Library shipped) {
    return new SheetFold(events, library, shipped).of(session);
  }

  /** Whether it tells of a rehearsal on a simulated neck. */
  public boolean rehearsed() {
    return heading.session().equals(Overview.REHEARSAL);
  }

  /** Whether its session was given up: it is over and has no outcome. */
  public boolean discarded() {
    return ended == null && heading.ended() != null;
  }

  /**
   * The data at the top of a sheet.
   *
   * @param instrument its own name, or null
   * @param kind the kind's name, or its id where it is not known; null where none was chosen
   * @param by the names of who worked, or null
   * @param ticket as the instrument's file has it now, or null
   * @param bench the time from the first answer to the last, without waits and breaks; null where
   *     there is none, and for a rehearsal, whose clock is simulated
   * @param procedure the procedure's title, or its id
   * @param ended when it ended or was discarded; null while it is open
   */
  public record Heading(
      String session,
      @Nullable String instrument,
      @Nullable String kind,
      @Nullable Style style,
      @Nullable Role role,
      @Nullable String by,
      @Nullable String ticket,
      @Nullable Duration bench,
      String procedure,
      @Nullable Instant began,
      @Nullable Instant ended) {
    /** The time at the bench in whole minutes, or null. */
    @Nullable Long minutes() {
      return bench == null ? null : bench.plusSeconds(30).toMinutes();
    }
  }

  /**
   * This sheet with what stands in no session.
   *
   * @param ticket as the instrument's file has it now, or null
   * @param state of a session that is not over, in words, or null
   */
  public Sheet with(@Nullable String ticket, @Nullable String state) {
    Heading now =
        new Heading(
            heading.session(),
            heading.instrument(),
            heading.kind(),
            heading.style(),
            heading.role(),
            heading.by(),
            ticket,
            heading.bench(),
            heading.procedure(),
            heading.began(),
            heading.ended());
    return new Sheet(
        now,
        complaint,
        notes,
        strings,
        findings,
        rows,
        played,
        rod,
        settings,
        waits,
        hazards,
        readings,
        open,
        ended,
        state == null ? standing : state,
        care,
        next);
  }

  /** What the first play test found, and the last. */
  public record Played(String found, String left) {}

  /**
   * A stop on the way through the work, by its titles.
   *
   * @param stage the title of the procedure, or empty where it is not known
   * @param part the title of its part, or empty
   */
  public record Stop(String stage, String part) {
    /** Both titles: "Neck relief, settle and read". */
    public String words() {
      if (stage.isEmpty()) {
        return "-";
      }
      return part.isEmpty()
          ? stage
          : stage + ", " + part.substring(0, 1).toLowerCase(Locale.ROOT) + part.substring(1);
    }
  }

  /** A question and its answer at a step. */
  public record Remark(Instant at, String about, String text) {}

  /** The part of a reading in relation to the changes that affect it. */
  public enum Part {
    AS_FOUND("as found"),
    BETWEEN("between"),
    AS_LEFT("as left"),
    /** A quantity that no change affected. */
    FOUND_AND_LEFT("as found and as left");

    private final String words;

    Part(String words) {
      this.words = words;
    }

    public String words() {
      return words;
    }
  }

  /**
   * A reading with its place on the sheet.
   *
   * @param taken where in the work it was taken
   * @param window its window, or null where there is none for this convention
   * @param verdict how it stands to the window, or null
   * @param spoiled the later change that made it stale, or null
   */
  public record Taken(
      Event.Read read,
      Part part,
      Stop taken,
      @Nullable Window window,
      @Nullable Verdict verdict,
      @Nullable String spoiled) {}

  /**
   * The results of one quantity on one string.
   *
   * @param string the note, or a word for the string, or empty
   * @param convention the convention of the readings
   * @param found null where it was not read before the first change that affects it
   * @param left the last reading
   */
  public record Row(
      Quantity quantity,
      String string,
      String convention,
      @Nullable Window window,
      @Nullable String source,
      @Nullable Taken found,
      Taken left) {}

  /**
   * A rod turn; {@code sure} is false where a person recalled it after a break and was not sure.
   */
  public record Move(Instant at, Turn turn, @Nullable Feel feel, boolean sure) {}

  /**
   * All turning of the rod.
   *
   * @param net the rod's position from as found, plus is tighter
   * @param total all turns added up, without direction
   */
  public record Rod(List<Move> moves, Turn net, Turn total) {}

  /**
   * A wait.
   *
   * @param taken where in the work it was
   * @param needed whether it had to be waited at all
   * @param reason why the wait was ended early or was not needed, or null
   */
  public record Pause(
      String step,
      Stop taken,
      boolean needed,
      Instant began,
      Instant until,
      @Nullable Instant ended,
      @Nullable String reason) {
    /** Whether the wait was ended early, or was not needed. */
    public boolean skipped() {
      return reason != null;
    }
  }

  /** When to look at the instrument again, and what to look at. */
  public record Again(Instant at, String what) {}
}
