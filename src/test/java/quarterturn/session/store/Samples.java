package quarterturn.session.store;

import java.time.Instant;
import java.util.List;
import quarterturn.procedure.Recorded;
import quarterturn.procedure.condition.Feel;
import quarterturn.procedure.condition.Role;
import quarterturn.procedure.kind.Quantity;
import quarterturn.procedure.kind.Style;
import quarterturn.procedure.kind.Which;
import quarterturn.session.Carried;
import quarterturn.session.Event;
import quarterturn.session.journal.Journal;
import quarterturn.session.listing.Glance;
import quarterturn.session.listing.Glances;
import quarterturn.unit.Bracket;
import quarterturn.unit.Turn;

/** Invented events and headers for the tests of the journal. */
public final class Samples {
  public static final Journal.Header HEADER =
      new Journal.Header("2027-03-01-relief-k3f9", "relief", 3, "ab".repeat(32));

  private Samples() {}

  public static Instant at(int minute) {
    return Instant.parse("2027-03-01T09:00:00Z").plusSeconds(60L * minute);
  }

  /** What listings have of a session's events. */
  public static Glance glance(String name, List<Event> events) {
    Journal.Header header = new Journal.Header(name, "relief", 3, "d1");
    return Glances.of(name, new Journal.Contents(header, events, null, 0));
  }

  public static Event.Started started(int minute, String instrument) {
    return new Event.Started(
        at(minute),
        "relief",
        3,
        "ab".repeat(32),
        Role.BEGINNER,
        instrument,
        "bass-34",
        Style.MEDIUM,
        17,
        List.of(),
        List.of(),
        null,
        null);
  }

  public static Event.Read relief(int minute, Which which, double low, double high) {
    return new Event.Read(
        at(minute),
        "measure-relief",
        Quantity.RELIEF,
        which,
        "E",
        List.of(1, 17),
        8,
        0.05,
        new Bracket(low, high),
        null);
  }

  public static Event.Read unmeasured(int minute) {
    return new Event.Read(
        at(minute),
        "measure-relief",
        Quantity.RELIEF,
        Which.LOWEST,
        "E",
        List.of(1, 17),
        8,
        0.05,
        null,
        null);
  }

  public static Event.Turned turned(int minute, Turn turn) {
    return new Event.Turned(at(minute), "turn", turn, Feel.SMOOTH);
  }

  /** Every kind of event, with every field that may be null both null and not. */
  public static List<Event> everyKind() {
    List<Event.Past> past =
        List.of(
            new Event.Past(at(-9000), Turn.EIGHTH, new Bracket(0.5, 0.55), Bracket.touches()),
            new Event.Past(at(-8000), new Turn(-1 / 3.0), null, Bracket.passes(1)),
            new Event.Past(at(-7000), Turn.NONE, Bracket.lifts(0.05), null, null, at(-7500)));
    return List.of(
        new Event.Started(
            at(0),
            "relief",
            3,
            "d1",
            Role.TECHNICIAN,
            "practice-bass",
            "bass-34",
            Style.HARD,
            16,
            past,
            List.of(),
            null,
            new Carried(
                List.of(new Carried.Stop(at(-5000), "2027-02-20-relief-k3f9", "jammed", "Jammed.")),
                past,
                past,
                at(-4000),
                List.of(
                    new Carried.Said(at(0), "one", Carried.Answer.SAME, null, null),
                    new Carried.Said(at(0), "clock", Carried.Answer.CLOCK, null, null),
                    new Carried.Said(at(-3), "two", Carried.Answer.TURNED, Turn.EIGHTH, null),
                    new Carried.Said(at(0), "three", Carried.Answer.NEW_START, null, "a neck")))),
        new Event.Started(
            at(0),
            "relief",
            3,
            "d1",
            Role.BEGINNER,
            null,
            null,
            null,
            null,
            List.of(),
            List.of(),
            null,
            null,
            "/home/demo/bench/procedures/relief.yaml",
            "Ana",
            List.of(new Event.Known(at(-9), Recorded.ROD_PLACE, "headstock")),
            "2027-03-01-1-first-turn",
            at(-60),
            new Event.Earlier(3, "1a2b", new Event.Summed(Turn.SIXTEENTH, 5, at(-90)))),
        new Event.Accepted(at(1), "tools", "sharp-ends", List.of("posture")),
        new Event.Told(at(2), "tools"),
        new Event.Chose(at(3), "rod-place", "headstock", null),
        relief(4, Which.LOWEST, 0.3, 0.35),
        relief(4, Which.HIGHEST, 0.1 + 0.2, 12 * 25.4 / 1000),
        new Event.Read(
            at(5),
            "touch",
            Quantity.RELIEF,
            Which.LOWEST,
            "E",
            List.of(1, 17),
            8,
            0.05,
            Bracket.touches(),
            null),
        new Event.Read(
            at(5),
            "over",
            Quantity.RELIEF,
            Which.LOWEST,
            "E",
            List.of(1, 17),
            8,
            0.05,
            Bracket.passes(1.0),
            null),
        new Event.Read(at(5), "room", Quantity.HUMIDITY, null, null, List.of(), 0, 1, null, 48.5),
        unmeasured(6),
        new Event.Offered(
            at(7), "turn", Turn.EIGHTH, Turn.SIXTEENTH, new Bracket(Double.NEGATIVE_INFINITY, 0.4)),
        new Event.UndoAsked(at(8), "turn"),
        new Event.Turned(at(9), "turn", new Turn(-1 / 12.0), Feel.STIFF),
        new Event.Turned(at(9), "turn", Turn.NONE, Feel.JAMMED),
        new Event.Recalled(at(10), "turn", Turn.SIXTEENTH, true, Feel.STIFF),
        new Event.Recalled(at(10), "turn", Turn.NONE, false, null),
        new Event.WaitBegan(at(11), "settle", at(26)),
        new Event.Waited(at(26), "settle", null),
        new Event.Waited(at(26), "rest", "größer: \"50 %\"\n\u001b[31m\u2028 \ud834\udd1e \ud800"),
        new Event.Passed(at(26), "settle-first", "strings is same"),
        new Event.ReadBack(at(26), "before-turn", "relief E1", "0.60 to 0.65 mm"),
        new Event.Doubted(at(26), "found-low", "30 mm is not plausible for relief."),
        new Event.Corrected(at(27), "turn"),
        new Event.Left(at(28), "rod turned, strings not yet back at pitch"),
        new Event.Resumed(Instant.parse("2027-03-02T09:00:00.123456789Z"), List.of(), null),
        new Event.Resumed(
            at(1500),
            List.of(new Event.Past(at(1400), Turn.EIGHTH, new Bracket(0.6, 0.65), null)),
            null),
        new Event.Noted(at(60), "complaint", "buzzes low down"),
        new Event.Adjusted(at(60), "set-saddles", "saddle-height", "E1", -1.5),
        new Event.Ended(at(29), "finished", false, "in-window", "The relief is in its window."),
        new Event.Ended(at(29), "stop", true, "no-answer", "The neck gave no answer."),
        new Event.Discarded(at(61), "rod turned, strings not yet back at pitch"));
  }
}
