package quarterturn.report.sheet;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import quarterturn.procedure.Library;
import quarterturn.procedure.Procedure;
import quarterturn.procedure.Step;
import quarterturn.procedure.condition.Role;
import quarterturn.procedure.kind.Kind;
import quarterturn.procedure.kind.Quantity;
import quarterturn.procedure.kind.Style;
import quarterturn.procedure.read.Shelf;
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

/** The note that goes with an instrument to a repairer. */
class RepairNoteTest {
  /** Lines of a page at six lines to the inch, less its margins (common practice, no source). */
  private static final int PAGE = 60;

  private static String note(List<Event> events, Library library) {
    Sheet sheet = Sheet.of("2027-03-01-demo", events, library);
    String text =
        SheetFormat.TEXT.write(
            RepairNote.TITLE, RepairNote.of(sheet, events, library, Told.DATES));
    List<String> lines = text.lines().toList();
    assertWithMessage(text).that(lines.size()).isAtMost(PAGE);
    lines.forEach(line -> assertWithMessage(line).that(Table.columns(line)).isAtMost(78));
    assertThat(text).contains("Readings by the player, not a repairer's finding.");
    return text;
  }

  private static Event.Before before(Quantity quantity, Bracket bracket, Double value) {
    return new Event.Before(Play.NOON, quantity, "E1", bracket, value, List.of());
  }

  /** A technician at a stage of a set-up, on an instrument whose relief and action were read. */
  private static Play stage(String procedure, String kind, String lowest) throws Exception {
    Event.Before relief =
        new Event.Before(
            Play.NOON, Quantity.RELIEF, lowest, new Bracket(0.30, 0.35), null, List.of());
    Event.Before action =
        new Event.Before(Play.NOON, Quantity.ACTION, lowest, null, 2.5, List.of());
    return Play.of(
        Play.library(procedure), Role.TECHNICIAN, kind, Style.MEDIUM, relief, action);
  }

  private static Play values(Play play, double... values) {
    play.to("read");
    for (double value : values) {
      play.give(new Answer.Value(value));
    }
    return play;
  }

  private static List<Event> rehearsed(NamedNeck neck) throws Exception {
    PracticeBench bench = Practising.on(neck);
    for (int i = 0; i < 300 && !bench.prompt().ended(); i++) {
      bench.answer(bench.truth());
    }
    return bench.events();
  }

  @Test
  void aRodThatDoesNotAnswer() throws Exception {
    String text = note(rehearsed(NamedNeck.DEAD), Practising.relief());
    SheetFormatsTest.assertGolden(text, "note-no-answer.txt");
  }

  @Test
  void aRodNutThatDoesNotMove() throws Exception {
    String text = note(rehearsed(NamedNeck.JAMMED), Practising.relief());
    SheetFormatsTest.assertGolden(text, "note-jammed.txt");
  }

  @Test
  void aLowAndAHighSlot() throws Exception {
    Play play = stage("nut-clearance", "bass-34", "E1").to("read");
    play.read("touches").read("0.10 passes 0.15 lifts").read("0.10 passes 0.15 lifts");
    play.read("0.40 passes 0.45 lifts").to("low-test").choose("buzzes-open");
    String text = note(play.events, Play.library("nut-clearance"));
    SheetFormatsTest.assertGolden(text, "note-nut.txt");
  }

  @Test
  void aSaddleInOnePiece() throws Exception {
    Play play = stage("action", "acoustic-steel", "E2");
    values(play, 3.5, 3.25, 3.0, 2.75, 2.0, 1.75).to("saddles").choose("fixed");
    String text = note(play.events, Play.library("action"));
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
    String text = note(play.events, Play.library("action"));
    SheetFormatsTest.assertGolden(text, "note-neck.txt");
  }
}
