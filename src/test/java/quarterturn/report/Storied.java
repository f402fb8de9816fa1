package quarterturn.report;

import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import quarterturn.procedure.condition.Feel;
import quarterturn.procedure.condition.Role;
import quarterturn.procedure.kind.Quantity;
import quarterturn.procedure.kind.Which;
import quarterturn.session.Event;
import quarterturn.session.listing.SessionReadings;
import quarterturn.unit.Bracket;
import quarterturn.unit.Turn;

/** An invented bass over three sessions in a year. */
final class Storied {
  private static final Instant SPRING = Instant.parse("2027-03-01T10:00:00Z");
  private static final Instant SUMMER = Instant.parse("2027-07-10T09:00:00Z");
  private static final Instant WINTER = Instant.parse("2027-12-20T18:00:00Z");

  private Storied() {}

  static Instant after(Instant start, int minutes) {
    return start.plusSeconds(60L * minutes);
  }

  private static Event.Started started(Instant at) {
    return new Event.Started(
        at,
        "relief",
        3,
        "0123",
        Role.BEGINNER,
        "demo",
        "demo-bass",
        null,
        null,
        List.of(),
        List.of(),
        null,
        null);
  }

  static Event.Read relief(Instant at, Which which, Bracket bracket) {
    String string = which == Which.LOWEST ? "E1" : "G2";
    return new Event.Read(
        at, "read", Quantity.RELIEF, which, string, List.of(1, 17), 8, 0.05, bracket, null);
  }

  private static Event.Read room(Instant at, double percent) {
    return new Event.Read(
        at, "room", Quantity.HUMIDITY, null, null, List.of(), 0, 1, null, percent);
  }

  private static Event.Turned turned(Instant at, Turn turn) {
    return new Event.Turned(at, "turn", turn, Feel.SMOOTH);
  }

  /** The newest first, as a folder may list them. */
  static Map<String, List<Event>> sessions() {
    Map<String, List<Event>> sessions = new LinkedHashMap<>();
    sessions.put(
        "2027-12-20-relief-d4e5",
        List.of(
            started(WINTER),
            room(after(WINTER, 1), 31),
            relief(after(WINTER, 2), Which.LOWEST, Bracket.touches()),
            relief(after(WINTER, 3), Which.HIGHEST, new Bracket(0.05, 0.10)),
            turned(after(WINTER, 5), Turn.QUARTER.opposite())));
    sessions.put(
        "2027-07-10-relief-b2c3",
        List.of(
            started(SUMMER),
            room(after(SUMMER, 1), 62),
            relief(after(SUMMER, 2), Which.LOWEST, new Bracket(0.45, 0.50)),
            turned(after(SUMMER, 5), Turn.EIGHTH),
            relief(after(SUMMER, 25), Which.LOWEST, new Bracket(0.30, 0.35))));
    sessions.put(
        "2027-03-01-relief-a1b2",
        List.of(
            started(SPRING),
            relief(after(SPRING, 1), Which.LOWEST, new Bracket(0.90, 0.95)),
            new Event.Corrected(after(SPRING, 2), "read"),
            relief(after(SPRING, 2), Which.LOWEST, new Bracket(0.60, 0.65)),
            turned(after(SPRING, 5), Turn.EIGHTH),
            relief(after(SPRING, 25), Which.LOWEST, new Bracket(0.50, 0.55)),
            turned(after(SPRING, 30), Turn.EIGHTH),
            relief(after(SPRING, 55), Which.LOWEST, new Bracket(0.40, 0.45))));
    return sessions;
  }

  static List<Event.Past> turns() {
    return List.of(
        past(after(SPRING, 5), Turn.EIGHTH, new Bracket(0.60, 0.65), new Bracket(0.50, 0.55)),
        past(after(SPRING, 30), Turn.EIGHTH, new Bracket(0.50, 0.55), new Bracket(0.40, 0.45)),
        past(after(SUMMER, 5), Turn.EIGHTH, new Bracket(0.45, 0.50), new Bracket(0.30, 0.35)),
        new Event.Past(after(WINTER, 5), Turn.QUARTER.opposite(), Bracket.touches(), null));
  }

  private static Event.Past past(Instant at, Turn turn, Bracket before, Bracket after) {
    return new Event.Past(at, turn, before, after);
  }

  static ReadingHistory history() {
    Map<String, SessionReadings> readings = new LinkedHashMap<>();
    sessions().forEach((name, events) -> readings.put(name, SessionReadings.of(events)));
    return ReadingHistory.of("demo", readings, turns());
  }

  /** This story with readings of a quantity in millimetres on two strings. */
  static ReadingHistory withAction() {
    ReadingHistory plain = history();
    List<ReadingHistory.Point> points = new ArrayList<>(plain.points());
    points.add(action("2027-03-01-relief-a1b2", after(SPRING, 60), true, 12, 2.4));
    points.add(action("2027-03-01-relief-a1b2", after(SPRING, 61), true, 1, 0.5));
    points.add(action("2027-03-01-relief-a1b2", after(SPRING, 62), false, 12, 1.9));
    points.add(action("2027-07-10-relief-b2c3", after(SUMMER, 30), true, 12, 2.0));
    return new ReadingHistory(plain.instrument(), plain.visits(), points, plain.moves());
  }

  private static ReadingHistory.Point action(
      String session, Instant at, boolean lowest, int fret, double mm) {
    String string = lowest ? "E1" : "G2";
    return new ReadingHistory.Point(at, session, "action", "mm", lowest, string, fret, mm, mm);
  }
}
