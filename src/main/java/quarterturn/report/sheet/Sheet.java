package quarterturn.report.sheet;

import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;
import quarterturn.craft.Window;
import quarterturn.procedure.Library;
import quarterturn.procedure.condition.Feel;
import quarterturn.procedure.condition.Role;
import quarterturn.procedure.condition.Verdict;
import quarterturn.procedure.kind.Quantity;
import quarterturn.procedure.kind.Style;
import quarterturn.session.Event;
import quarterturn.unit.Turn;

/**
 * The set-up sheet: what a session found, did and left, as it can be handed to a customer. Texts
 * are as they were typed; each format makes them safe in its own way.
 *
 * @param rows as found and as left, one for each quantity, string and convention
 * @param settings saddles and pickups that were set
 * @param readings every reading that stands, oldest first
 * @param findings choices that were made, without those about kind, style and strings
 * @param open what is still to be seen to
 * @param next when to look again, none where a repairer decides
 * @param standing in what state it was last left, where it has not ended; or null
 */
public record Sheet(
    Heading heading,
    @Nullable String complaint,
    List<Remark> notes,
    List<Remark> strings,
    List<Remark> findings,
    List<Row> rows,
    Rod rod,
    List<Event.Adjusted> settings,
    List<Pause> waits,
    List<Remark> hazards,
    List<Taken> readings,
    List<String> open,
    Event.@Nullable Ended ended,
    @Nullable String standing,
    List<Again> next) {
  /** What a sheet can't do, last on every one. */
  public static final List<String> LIMITS =
      List.of(
          "It does not replace a qualified repairer.",
          "Readings are those of the person at the bench, with the gauges at hand.",
          "A window holds for its own way of reading only; it is a starting point, and the player"
              + " and the state of the frets decide.");

  /**
   * The sheet of a session.
   *
   * @param session its name
   * @param events oldest first
   * @param library for labels, kinds, what spoils what and when to look again; a procedure may be
   *     gone from it
   */
  public static Sheet of(String session, List<Event> events, Library library) {
    return of(session, events, library, library);
  }

  /**
   * The sheet of a session whose procedures may be gone from the user's own library.
   *
   * @param session its name
   * @param events oldest first
   * @param library as it is now
   * @param shipped tells what a step records whose procedure is gone from the library
   */
  public static Sheet of(String session, List<Event> events, Library library, Library shipped) {
    return new SheetFold(library, shipped).of(session, events);
  }

  /**
   * What stands on top.
   *
   * @param instrument its own name, or null
   * @param kind the kind's name, or its id where it is not known; null where none was chosen
   * @param procedure the procedure's title, or its id
   * @param ended null while it is open
   */
  public record Heading(
      String session,
      @Nullable String instrument,
      @Nullable String kind,
      @Nullable Style style,
      @Nullable Role role,
      String procedure,
      @Nullable Instant began,
      @Nullable Instant ended) {}

  /** Something said at a step: what was asked, and what was answered. */
  public record Remark(Instant at, String about, String text) {}

  /** Where a reading stands among the changes that touch it. */
  public enum Part {
    AS_FOUND("as found"),
    BETWEEN("between"),
    AS_LEFT("as left"),
    /** Nothing that touches it was changed. */
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
   * A reading in its place.
   *
   * @param window what it should come to, or null where there is none for this way of reading
   * @param verdict how it stands to the window, or null
   * @param spoiled what was changed afterwards that spoils it, or null
   */
  public record Taken(
      Event.Read read,
      Part part,
      @Nullable Window window,
      @Nullable Verdict verdict,
      @Nullable String spoiled) {}

  /**
   * One quantity on one string.
   *
   * @param string the note, or a word for the string, or empty
   * @param convention how it was read
   * @param found null where it was not read before the first change that touches it
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

  /** One turn; {@code sure} is false where it was told from memory after a break, unsurely. */
  public record Move(Instant at, Turn turn, @Nullable Feel feel, boolean sure) {}

  /**
   * The rod.
   *
   * @param net where it stands from as found, plus is tighter
   * @param total all turning, either way added up
   */
  public record Rod(List<Move> moves, Turn net, Turn total) {}

  /**
   * A time that was to pass.
   *
   * @param reason why it was ended early, or null
   */
  public record Pause(
      String step, Instant began, Instant until, @Nullable Instant ended, @Nullable String reason) {
    /** Whether it was skipped. */
    public boolean skipped() {
      return reason != null;
    }
  }

  /** When to look again, and at what. */
  public record Again(Instant at, String what) {}
}
