package quarterturn.report;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import quarterturn.craft.Window;
import quarterturn.craft.rod.Prior;
import quarterturn.line.Invented;
import quarterturn.procedure.Branch;
import quarterturn.procedure.Guide;
import quarterturn.procedure.Library;
import quarterturn.procedure.Mark;
import quarterturn.procedure.Procedure;
import quarterturn.procedure.Recorded;
import quarterturn.procedure.Results;
import quarterturn.procedure.ShippedRules;
import quarterturn.procedure.Step;
import quarterturn.procedure.Words;
import quarterturn.procedure.condition.Feel;
import quarterturn.procedure.condition.Role;
import quarterturn.procedure.kind.BridgeKind;
import quarterturn.procedure.kind.Ends;
import quarterturn.procedure.kind.Kind;
import quarterturn.procedure.kind.Make;
import quarterturn.procedure.kind.Quantity;
import quarterturn.procedure.kind.Style;
import quarterturn.procedure.kind.Which;
import quarterturn.session.Event;
import quarterturn.unit.Bracket;
import quarterturn.unit.Length;
import quarterturn.unit.Turn;

/** An invented set-up of an invented bass with three strings. */
public final class SetUp {
  static final Instant BEGAN = Told.BEGAN;
  private static final Mark MARK = new Mark("demo.yaml", 1, 1);
  private static final String INVENTED = "invented for the tests";

  private SetUp() {}

  private static Words words(String text) {
    return new Words("Demo", text, null, null, List.of(), List.of(), false, null, null, null);
  }

  private static Map<Style, Ends> ends(double low, double high, double low2, double high2) {
    return Map.of(Style.MEDIUM, new Ends(new Window(low, high), new Window(low2, high2), INVENTED));
  }

  private static final Kind KIND =
      new Kind(
          "demo-bass",
          "Demo bass, three strings",
          Length.inches(34),
          List.of("E1", "A1", "D2"),
          20,
          17,
          8,
          Prior.BASS,
          Map.of(
              Quantity.RELIEF, ends(0.30, 0.45, 0.30, 0.45),
              Quantity.NUT_CLEARANCE, ends(0.10, 0.25, 0.10, 0.25),
              Quantity.ACTION, ends(2.25, 2.75, 1.75, 2.25),
              Quantity.INTONATION, ends(-2, 2, -2, 2),
              Quantity.PICKUP_GAP, ends(2.5, 3.5, 2.0, 3.0)),
          new Make(Length.mm(241), Length.mm(57), List.of(), BridgeKind.ADJUSTABLE));

  private static final Step STRINGS =
      new Step.Choose(
          "strings-on",
          words("What strings are on?"),
          MARK,
          List.of(
              new Step.Option("same", "Those it came with", Set.of(), null, "x"),
              new Step.Option("other", "A set of another gauge", Set.of(), "new-set", "x")),
          null,
          null);

  private static final Step ROD_PLACE =
      new Step.Choose(
          "rod-place",
          words("Where is the rod nut?"),
          MARK,
          List.of(new Step.Option("headstock", "At the headstock", Set.of(), null, "x")),
          null,
          null);

  private static final Step HEARD =
      new Step.Note("heard", words("What did you hear? Write it down."), MARK, null, "x");

  private static final Step PLAYED =
      new Step.Note("played", words("Where does it buzz?"), MARK, Recorded.PLAY_FOUND, "x");

  private static final Step PLAYED_AGAIN =
      new Step.Choose(
          "played-again",
          words("Where does it still buzz?"),
          MARK,
          List.of(
              new Step.Option("nowhere", "Nowhere", Set.of(), null, "x"),
              new Step.Option("last-frets", "On the last frets", Set.of(), null, "x")),
          null,
          Recorded.PLAY_LEFT);

  private static final Step COMPLAINT =
      new Step.Note("complaint", words("The complaint"), MARK, Recorded.COMPLAINT, "x");

  private static final Step NEW_GAUGES =
      new Step.Note("new-gauges", words("new gauges"), MARK, Recorded.NEW_GAUGES, "x");

  private static final Step DRESSED =
      new Step.Tell(
          "dressed", words("Dress the frets."), MARK, Set.of(), "fret-work", Branch.Fork.to("x"));

  private static Results.Result result(String id, @Nullable Quantity quantity) {
    return new Results.Result(id, id, null, quantity);
  }

  private static Results.Change change(String id, String name, String... spoils) {
    return new Results.Change(id, name, Set.of(spoils), Set.of());
  }

  private static final Results RESULTS =
      new Results(
          Map.of(
              "relief", result("relief", Quantity.RELIEF),
              "nut-clearance", result("nut-clearance", Quantity.NUT_CLEARANCE),
              "action", result("action", Quantity.ACTION),
              "intonation", result("intonation", Quantity.INTONATION),
              "pickup-height", result("pickup-height", Quantity.PICKUP_GAP)),
          Map.of(
              "rod",
              change("rod", "the rod was turned", "relief", "action", "intonation"),
              "new-set",
              change(
                  "new-set",
                  "other strings were put on",
                  "relief",
                  "nut-clearance",
                  "action",
                  "intonation",
                  "pickup-height"),
              "saddle-height",
              change("saddle-height", "a saddle was raised or lowered", "action", "intonation"),
              "fret-work",
              change("fret-work", "the frets were worked on", "relief", "nut-clearance"),
              "climate",
              change("climate", "the air changed", "relief", "action", "intonation")),
          List.of(),
          List.of("Keep it in its case (invented)."),
          Guide.NONE);

  public static final Library LIBRARY =
      new Library(
          Map.of(
              "demo",
              new Procedure(
                  "demo",
                  1,
                  "Whole set-up",
                  "To show.",
                  List.of(),
                  "strings-on",
                  "strings-on",
                  "strings-on",
                  Map.of(
                      "strings-on",
                      STRINGS,
                      "rod-place",
                      ROD_PLACE,
                      "heard",
                      HEARD,
                      "played",
                      PLAYED,
                      "played-again",
                      PLAYED_AGAIN,
                      "complaint",
                      COMPLAINT,
                      "new-gauges",
                      NEW_GAUGES,
                      "dressed",
                      DRESSED),
                  "0",
                  List.of())),
          Map.of("demo-bass", KIND),
          Map.of("string-whip", Invented.WHIP),
          ShippedRules.LIMITS,
          RESULTS);

  public static Event.Started started(@Nullable String instrument) {
    return new Event.Started(
        BEGAN,
        "demo",
        1,
        "0",
        Role.TECHNICIAN,
        instrument,
        "demo-bass",
        Style.MEDIUM,
        null,
        List.of(),
        List.of(),
        null,
        null);
  }

  public static Instant minute(int minute) {
    return Told.minute(minute);
  }

  public static Event.Read relief(int minute, String string, @Nullable Bracket bracket) {
    return new Event.Read(
        minute(minute),
        "read-relief",
        Quantity.RELIEF,
        string.equals("E1") ? Which.LOWEST : Which.HIGHEST,
        string,
        List.of(1, 17),
        8,
        0.05,
        bracket,
        null);
  }

  public static Event.Read nut(int minute, String string, Bracket bracket) {
    return new Event.Read(
        minute(minute),
        "read-nut",
        Quantity.NUT_CLEARANCE,
        Which.EACH,
        string,
        List.of(3),
        1,
        0.05,
        bracket,
        null);
  }

  private static Event.Read value(
      int minute,
      Quantity quantity,
      @Nullable String string,
      List<Integer> held,
      int readAt,
      double step,
      double value) {
    Which which = string == null ? null : Which.EACH;
    String id = "read-" + quantity.word();
    return new Event.Read(
        minute(minute), id, quantity, which, string, held, readAt, step, null, value);
  }

  public static Event.Read action(int minute, String string, double mm) {
    return value(minute, Quantity.ACTION, string, List.of(), 12, 0.25, mm);
  }

  static Event.Read intonation(int minute, String string, double cents) {
    return value(minute, Quantity.INTONATION, string, List.of(12), 0, 1, cents);
  }

  public static Event.Read pickup(int minute, String string, double mm) {
    return value(minute, Quantity.PICKUP_GAP, string, List.of(20), 0, 0.1, mm);
  }

  public static Event.Read air(int minute, Quantity quantity, double value) {
    return value(minute, quantity, null, List.of(), 0, 1, value);
  }

  public static Event.Turned turned(int minute, double turn) {
    return new Event.Turned(minute(minute), "turn", new Turn(turn), Feel.SMOOTH);
  }

  /** From a complaint to an ending, with what is left open. */
  public static List<Event> whole() {
    return List.of(
        started("demo-bass"),
        new Event.Noted(minute(1), "complaint", "It buzzes low down since the winter."),
        new Event.Noted(minute(2), "heard", "A rattle at fret 2 | open E only."),
        new Event.Noted(minute(2), "played", "Frets 1 to 3, E1."),
        new Event.Chose(minute(3), "rod-place", "headstock", null),
        new Event.Chose(minute(4), "strings-on", "other", null),
        new Event.Noted(minute(5), "new-gauges", "105 85 65"),
        air(6, Quantity.HUMIDITY, 48),
        air(7, Quantity.TEMPERATURE, 21),
        new Event.Accepted(minute(8), "rod-place", "string-whip", List.of()),
        relief(10, "E1", new Bracket(0.90, 0.95)),
        new Event.Corrected(minute(11), "read-relief"),
        relief(12, "E1", new Bracket(0.60, 0.65)),
        relief(13, "D2", new Bracket(0.55, 0.60)),
        nut(14, "E1", new Bracket(0.05, 0.10)),
        nut(15, "A1", new Bracket(0.15, 0.20)),
        nut(16, "D2", new Bracket(0.20, 0.30)),
        intonation(17, "D2", 5),
        new Event.Offered(minute(20), "turn", Turn.EIGHTH),
        turned(21, 0.125),
        new Event.WaitBegan(minute(22), "settle", minute(32)),
        new Event.Waited(minute(32), "settle", null),
        relief(33, "E1", new Bracket(0.45, 0.50)),
        turned(34, 0.125),
        new Event.WaitBegan(minute(35), "settle", minute(45)),
        new Event.Waited(minute(36), "settle", "the neck is known to rest at once"),
        relief(37, "E1", new Bracket(0.35, 0.40)),
        relief(38, "D2", new Bracket(0.30, 0.35)),
        action(40, "E1", 3),
        action(41, "A1", 2.25),
        action(42, "D2", 2),
        new Event.Adjusted(minute(43), "set-saddles", "saddle-height", "E1", -0.5),
        action(45, "E1", 2.5),
        action(46, "A1", 2.25),
        action(47, "D2", 2),
        intonation(48, "E1", -3),
        pickup(50, "E1", 3),
        new Event.Chose(minute(52), "played-again", "nowhere", null),
        new Event.Ended(
            minute(55),
            "finish",
            false,
            "in-window",
            "A buzz on open strings alone comes from the nut: let a qualified repairer see it."));
  }

  /** Handed over in the middle, after a turn that is remembered unsurely. */
  public static List<Event> handedOver() {
    return List.of(
        started(null),
        relief(5, "E1", Bracket.touches()),
        new Event.Offered(minute(9), "turn", Turn.EIGHTH.opposite()),
        new Event.Left(minute(10), "the rod may be half way through a turn"),
        new Event.Resumed(minute(60), List.of(), null),
        new Event.Recalled(minute(61), "turn", Turn.EIGHTH.opposite(), false, null),
        new Event.Ended(minute(62), "stop", true, "no-response", "The rod did not answer."));
  }
}
