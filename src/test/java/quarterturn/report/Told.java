package quarterturn.report;

import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.condition.Feel;
import quarterturn.procedure.condition.Role;
import quarterturn.procedure.kind.Quantity;
import quarterturn.procedure.kind.Style;
import quarterturn.procedure.kind.Which;
import quarterturn.session.Event;
import quarterturn.unit.Bracket;
import quarterturn.unit.Dates;
import quarterturn.unit.Turn;

/** An invented session. */
public final class Told {
  public static final Dates DATES = new Dates(ZoneOffset.UTC);
  public static final Instant BEGAN = Instant.parse("2027-03-01T10:00:00Z");

  private Told() {}

  public static Instant minute(int minute) {
    return BEGAN.plusSeconds(60L * minute);
  }

  public static Event.Started started(@Nullable String instrument) {
    return new Event.Started(
        BEGAN,
        "relief",
        3,
        "0123abcd",
        Role.BEGINNER,
        instrument,
        "demo-bass",
        Style.MEDIUM,
        16,
        List.of(
            new Event.Past(
                Instant.parse("2026-11-02T09:00:00Z"), Turn.EIGHTH, new Bracket(0.5, 0.55), null)),
        List.of(),
        null,
        null);
  }

  public static Event.Read relief(int minute, Which which, @Nullable Bracket bracket) {
    return new Event.Read(
        minute(minute),
        "read-" + which.word(),
        Quantity.RELIEF,
        which,
        which == Which.LOWEST ? "E" : "G",
        List.of(1, 17),
        8,
        0.05,
        bracket,
        null);
  }

  static Event.Read humidity(int minute, double value) {
    return new Event.Read(
        minute(minute),
        "read-humidity",
        Quantity.HUMIDITY,
        null,
        null,
        List.of(),
        0,
        1,
        null,
        value);
  }

  public static Event.Turned turned(int minute, Turn turn, Feel feel) {
    return new Event.Turned(minute(minute), "turn", turn, feel);
  }

  /** A session of many kinds of events. */
  public static List<Event> everything() {
    return List.of(
        started("Demo bass"),
        new Event.Told(minute(1), "support-neck"),
        new Event.Accepted(minute(2), "retune", "string-whip", List.of()),
        new Event.Chose(minute(3), "rod-place", "headstock", null),
        humidity(4, 48),
        relief(5, Which.LOWEST, new Bracket(0.70, 0.75)),
        new Event.Corrected(minute(6), "read-lowest"),
        relief(7, Which.LOWEST, new Bracket(0.60, 0.65)),
        relief(8, Which.HIGHEST, new Bracket(0.55, 0.60)),
        new Event.Offered(minute(9), "turn", Turn.EIGHTH.opposite()),
        turned(10, Turn.EIGHTH.opposite(), Feel.SMOOTH),
        new Event.WaitBegan(minute(11), "settle", minute(21)),
        new Event.Waited(minute(21), "settle", null),
        relief(22, Which.LOWEST, new Bracket(0.65, 0.70)),
        relief(23, Which.HIGHEST, null),
        new Event.UndoAsked(minute(24), "turn"),
        new Event.Left(minute(25), "the rod may be half way through a turn"),
        new Event.Resumed(minute(600), List.of(), null),
        new Event.Recalled(minute(601), "turn", Turn.EIGHTH, false, null),
        new Event.WaitBegan(minute(602), "rest", minute(2042)),
        new Event.Waited(minute(603), "rest", "the neck is known"),
        relief(604, Which.LOWEST, Bracket.touches()),
        new Event.Ended(minute(605), "stop", true, "no answer", "The rod did not move the neck."));
  }
}
