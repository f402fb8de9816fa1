package quarterturn.report.sheet;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import quarterturn.procedure.InWindow;
import quarterturn.procedure.Library;
import quarterturn.procedure.Procedure;
import quarterturn.procedure.Step;
import quarterturn.procedure.condition.Role;
import quarterturn.procedure.kind.Kind;
import quarterturn.procedure.kind.Quantity;
import quarterturn.procedure.kind.Style;
import quarterturn.procedure.kind.Which;
import quarterturn.rehearsal.PracticeBench;
import quarterturn.rehearsal.simulated.NamedNeck;
import quarterturn.rehearsal.simulated.Practising;
import quarterturn.report.SetUp;
import quarterturn.report.Table;
import quarterturn.report.Told;
import quarterturn.session.Answer;
import quarterturn.session.Event;
import quarterturn.session.engine.Play;
import quarterturn.unit.Bracket;
import quarterturn.unit.NotUnderstoodException;

/** The note that goes with an instrument to a repairer. */
class RepairNoteTest {
  /** Lines of a page of 11 inches at six lines to the inch (common practice, no source). */
  private static final int PAGE = 66;

  /** Every stage of a set-up, and what they call. */
  private static final Library SETUP = Play.library("setup");

  /** The library of a set-up with another procedure as the one that was asked for. */
  private static Library library(String main) {
    Map<String, Procedure> first = new LinkedHashMap<>();
    first.put(main, SETUP.procedure(main));
    SETUP.procedures().forEach(first::putIfAbsent);
    return new Library(first, SETUP.kinds(), SETUP.hazards(), SETUP.limits(), SETUP.results());
  }

  private static String note(List<Event> events, Library library) {
    Sheet sheet = Sheet.of("2027-03-01-demo", events, library);
    String text =
        SheetFormat.TEXT.write(RepairNote.TITLE, RepairNote.of(sheet, events, library, Told.DATES));
    List<String> lines = text.lines().toList();
    assertWithMessage(text).that(lines.size()).isAtMost(PAGE);
    lines.forEach(line -> assertWithMessage(line).that(Table.columns(line)).isAtMost(78));
    assertThat(text).contains("Readings by the player, not a repairer's finding.");
    return text;
  }

  /** A technician at a stage of a set-up, on an instrument whose relief and action were read. */
  private static Play stage(String procedure, String kind, String lowest) throws Exception {
    Event.Before relief =
        new Event.Before(
            Play.NOON, Quantity.RELIEF, lowest, new Bracket(0.30, 0.35), null, List.of());
    Event.Before action =
        new Event.Before(Play.NOON, Quantity.ACTION, lowest, null, 2.5, List.of());
    return Play.of(library(procedure), Role.TECHNICIAN, kind, Style.MEDIUM, relief, action);
  }

  private static Play values(Play play, double... values) {
    play.to("read");
    for (double value : values) {
      play.give(new Answer.Value(value));
    }
    return play;
  }

  private static List<Event> rehearsed(NamedNeck neck) throws Exception {
    PracticeBench bench = Practising.on(neck, library("relief"), "bass-34", Role.BEGINNER);
    for (int i = 0; i < 300 && !bench.prompt().ended(); i++) {
      bench.answer(bench.truth());
    }
    return bench.events();
  }

  @Test
  void aRodThatDoesNotAnswer() throws Exception {
    String text = note(rehearsed(NamedNeck.DEAD), library("relief"));
    SheetFormatsTest.assertGolden(text, "note-no-answer.txt");
  }

  @Test
  void aRodNutThatDoesNotMove() throws Exception {
    String text = note(rehearsed(NamedNeck.JAMMED), library("relief"));
    SheetFormatsTest.assertGolden(text, "note-jammed.txt");
  }

  @Test
  void aLowAndAHighSlot() throws Exception {
    Play play = stage("nut-clearance", "bass-34", "E1").to("read");
    play.read("touches").read("0.10 passes 0.15 lifts").read("0.10 passes 0.15 lifts");
    play.read("0.40 passes 0.45 lifts").to("low-test").choose("buzzes-open");
    String text = note(play.events, library("nut-clearance"));
    SheetFormatsTest.assertGolden(text, "note-nut.txt");
  }

  @Test
  void aSaddleInOnePiece() throws Exception {
    Play play = stage("action", "acoustic-steel", "E2");
    values(play, 3.5, 3.25, 3.0, 2.75, 2.0, 1.75).to("saddles").choose("fixed");
    String text = note(play.events, library("action"));
    SheetFormatsTest.assertGolden(text, "note-saddle.txt");
  }

  @Test
  void saddlesAtTheEndOfTheirTravelOnANeckThatIsGlued() throws Exception {
    Play play = stage("action", "bass-34", "E1");
    while (!play.step().equals("travel")) {
      values(play, 3.5, 3.25, 2.75, 2.5);
      while (!play.step().equals("travel") && !play.step().equals("read")) {
        play.ordinary();
      }
    }
    play.choose("bottomed").to("joint").choose("glued");
    String text = note(play.events, library("action"));
    SheetFormatsTest.assertGolden(text, "note-neck.txt");
  }

  /**
   * A glued neck and a saddle in one piece, in a whole set-up: what its stages left to a repairer
   * stands on the note of a session that ended in good order.
   */
  @Test
  void whatAStageOfASetUpLeftOpenIsNotForgotten() throws Exception {
    PracticeBench bench =
        Practising.on(NamedNeck.NEGLECTED, SETUP, "acoustic-steel", Role.BEGINNER);
    while (!bench.prompt().ended()) {
      bench.answer(bench.truth());
    }
    Library library = SETUP;
    String text = note(bench.events(), library);
    assertThat(text).contains("Fixed saddle. ");
    assertThat(text).contains("Saddle height");
    assertThat(text).contains("It buzzes low down and plays high (invented)");
    assertThat(text).contains("turns, oldest first: ");
    assertThat(text).doesNotContain("finding is on record");
  }

  /** Everything that can be out of its range on six strings keeps to the page. */
  @Test
  void muchKeepsToOnePage() {
    Library library = SETUP;
    Kind kind = library.kind("acoustic-steel");
    List<Event> events = new ArrayList<>(List.of(started("setup", kind)));
    for (String string : kind.strings()) {
      events.add(read(kind, Quantity.RELIEF, string, new Bracket(0.9, 0.95), null));
      events.add(read(kind, Quantity.NUT_CLEARANCE, string, new Bracket(0.55, 0.6), null));
      events.add(read(kind, Quantity.ACTION, string, null, 4.0));
      events.add(read(kind, Quantity.INTONATION, string, null, 12.0));
      events.add(new Event.Adjusted(SetUp.minute(9), "set", "saddle-height", string, -0.5));
    }
    String text = note(events, library).replaceAll("\\s+", " ");
    for (String part : List.of("Relief: ", "Nut slot height: ", "Saddle height ", "along")) {
      assertThat(text).contains("- " + (part.equals("along") ? "Saddle along" : part));
    }
    assertThat(text).contains("saddle height: E2 -0.5, A2 -0.5, D3 -0.5");
  }

  private static Event.Started started(String procedure, Kind kind) {
    return new Event.Started(
        Play.NOON,
        procedure,
        1,
        "digest",
        Role.BEGINNER,
        "demo",
        kind.id(),
        Style.MEDIUM,
        null,
        List.of(),
        List.of(),
        null,
        null);
  }

  private static Event.Read read(
      Kind kind,
      Quantity quantity,
      String string,
      @Nullable Bracket bracket,
      @Nullable Double value) {
    return new Event.Read(
        SetUp.minute(5),
        "read",
        quantity,
        Which.EACH,
        string,
        quantity.held(kind),
        quantity.readAt(kind),
        0.05,
        bracket,
        value);
  }

  /** Every end of a shipped procedure that leaves something to a repairer has its note. */
  @ParameterizedTest
  @MethodSource("shipped")
  void everyEndForARepairerHasItsNote(String procedure) {
    Library library = library(procedure);
    Kind kind = library.kind("bass-34");
    for (Step step : library.main().steps().values()) {
      if (step instanceof Step.End end) {
        boolean over = end instanceof Step.HandOver;
        String text = end.words().text().replaceAll("[{}]", "");
        List<Event> events =
            List.of(
                started(procedure, kind),
                read(kind, Quantity.RELIEF, "E1", new Bracket(0.6, 0.65), null),
                read(kind, Quantity.ACTION, "E1", null, 3.5),
                new Event.Ended(SetUp.minute(600), end.id(), over, end.outcome(), text));
        String note = note(events, library).replaceAll("\\s+", " ");
        String said = procedure + ":" + end.id();
        String first = InWindow.shown(end.outcome()).substring(1) + ". ";
        assertWithMessage(said).that(note.contains(first)).isEqualTo(end.forRepairer());
        assertWithMessage(said).that(note).contains("Relief: E1 0.30 mm less.");
        assertWithMessage(said).that(note).contains("E1 2.5 mm down.");
        // Who may as well help is no repairer to hand over to.
        assertWithMessage(said + " names a repairer, not a qualified one")
            .that(!text.contains("repairer") || end.forRepairer() || asWell(end))
            .isTrue();
      }
    }
  }

  private static boolean asWell(Step.End end) {
    return List.of("not-measured", "get-key").contains(end.outcome());
  }

  static Set<String> shipped() {
    return SETUP.procedures().keySet();
  }

  @Test
  void theEndSaysHowToPrintIt() throws Exception {
    Play play = stage("nut-clearance", "bass-34", "E1").to("read");
    for (int i = 0; i < 4; i++) {
      play.read("touches");
    }
    play.to("low-test").choose("buzzes-open");
    assertThat(play.prompt().said().notes())
        .contains("A note for the repairer can be printed:\nquarterturn log export test --note");
    Play fine = stage("nut-clearance", "bass-34", "E1").to("read");
    for (int i = 0; i < 4; i++) {
      fine.read("0.15 passes 0.20 lifts");
    }
    fine.to("sticking").choose("runs-free");
    assertThat(String.join(" ", fine.prompt().said().notes())).doesNotContain("--note");
  }

  @Test
  void aNoteIsForPeople() {
    List<SheetPart> parts = List.of(SheetPart.points("Demo", List.of("Demo.")));
    assertThat(SheetFormat.MARKDOWN.write(RepairNote.TITLE, parts)).contains("# Note for the");
    assertThat(SheetFormat.HTML.write(RepairNote.TITLE, parts)).contains("<li>Demo.</li>");
    for (SheetFormat format : List.of(SheetFormat.CSV, SheetFormat.JSON)) {
      assertThrows(NotUnderstoodException.class, () -> format.write(RepairNote.TITLE, parts));
    }
  }
}
