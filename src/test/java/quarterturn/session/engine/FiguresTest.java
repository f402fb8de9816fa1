package quarterturn.session.engine;

import static com.google.common.truth.Truth.assertThat;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quarterturn.procedure.Library;
import quarterturn.procedure.condition.Role;
import quarterturn.procedure.kind.Quantity;
import quarterturn.procedure.kind.Style;
import quarterturn.session.Answer;
import quarterturn.session.Event;
import quarterturn.session.Prompt;
import quarterturn.session.RefusedException;
import quarterturn.unit.Bracket;

/**
 * The arithmetic in the steps. The numbers beside each check are derived on paper from similar
 * triangles and the frets' rule, not by this program, unless a source is named.
 */
class FiguresTest {
  private static Event.Before relief() {
    return new Event.Before(
        Play.NOON, Quantity.RELIEF, "E1", new Bracket(0.35, 0.40), null, List.of());
  }

  private static Event.Before action() {
    return new Event.Before(Play.NOON, Quantity.ACTION, "E1", null, 2.5, List.of());
  }

  private static Play at(String procedure, String step, double... values) throws Exception {
    Library library = Play.library(procedure);
    Play play = Play.of(library, Role.TECHNICIAN, "bass-34", Style.MEDIUM, relief(), action());
    play.to("read");
    for (double value : values) {
      play.give(new Answer.Value(value));
    }
    return step.isEmpty() ? play : play.to(step);
  }

  /** 0.5 mm too high at fret 12, half way: the saddle goes down by 1.0 mm, two turns of M3. */
  @Test
  void aSaddleGoesTwiceAsFarAsFretTwelve() throws Exception {
    Play play = at("action", "set-saddles", 2.75, 2.3, 2.2, 2.0);
    assertThat(play.prompt().said().text()).contains("E1 2.75 mm, range 2 to 2.5 mm.");
    assertThat(play.prompt().said().text()).contains("Lower its saddle by 1.0 mm");
    assertThat(play.prompt().said().text()).contains("about 2 turns");
    play.ok();
    Event.Adjusted adjusted =
        (Event.Adjusted)
            play.events.stream().filter(Event.Adjusted.class::isInstance).findFirst().orElseThrow();
    assertThat(adjusted.string()).isEqualTo("E1");
    assertThat(adjusted.amount()).isWithin(1e-9).of(-1.0);
    assertThat(play.step()).isEqualTo("tune");
  }

  @Test
  void aStringThatASaddleChangeDidNotTouchIsNotReadAgain() throws Exception {
    Play play = at("action", "set-saddles", 2.75, 2.3, 2.2, 2.0).ok().to("read");
    assertThat(((Prompt.Measure) play.prompt()).string()).isEqualTo("E1");
    play.give(new Answer.Value(2.3));
    assertThat(((Prompt.Done) play.prompt()).outcome()).isEqualTo("in-window");
  }

  /** A number behind the letter is a technician's way to name a note. */
  @Test
  void aBeginnerReadsTheLetterOfAString() throws Exception {
    Play beginner = Play.beginner("bass-34").to("found-low");
    assertThat(beginner.prompt().said().text()).contains("Press E, the lowest string, on top");
    Play technician = Play.technician("bass-34").to("found-low");
    assertThat(technician.prompt().said().text()).startsWith("Relief on E1,");
  }

  /** Only strings out of their windows are set; the windows between lie evenly. */
  @Test
  void eachStringHasItsOwnWindow() throws Exception {
    Play play = at("action", "set-saddles", 2.5, 2.3, 2.6, 1.5);
    assertThat(play.prompt().said().first().toString()).contains("D2 2.6 mm, range 1.8 to 2.3 mm.");
    assertThat(play.prompt().said().text()).contains("G2 1.5 mm, range 1.7 to 2.2 mm. Raise");
    play.ok();
    assertThat(play.step()).isEqualTo("tune");
  }

  /** 6 cents sharp on 864 mm: 2.0 cents a millimetre (1731 / 864, derived), so 3.0 mm back. */
  @Test
  void aSharpOctaveSendsTheSaddleBack() throws Exception {
    Play play = at("intonation", "set-saddles", 6, 0, 1, -5);
    assertThat(play.prompt().said().first().toString())
        .contains("E1 6 cents. Move its saddle 3.0 mm back");
    assertThat(play.prompt().said().text()).contains("G2 -5 cents. Move its saddle 2.5 mm forward");
  }

  @Test
  void aPickupGoesByItsGap() throws Exception {
    Play play = at("pickups", "set-pickups", 2.0, 2.5);
    assertThat(play.prompt().said().text()).contains("E1 2 mm, range 2.5 to 3.5 mm. Lower");
    assertThat(play.prompt().said().text()).contains("by 1.0 mm");
  }

  /** 19 mm apart over 241 mm: the inner strings stand 1.5 mm higher than the outer (derived). */
  @Test
  void theArcIsReckonedFromRadiusAndSpread() throws Exception {
    Play play = at("action", "saddles", 3.0, 2.3, 2.2, 2.0).choose("adjustable");
    assertThat(play.to("set-saddles").prompt().said().first()).hasSize(1);
    assertThat(play.prompt().said().first().get(0).text()).doesNotContain("{");
    Play beginner =
        Play.of(Play.library("action"), Role.BEGINNER, "bass-34", Style.MEDIUM, relief(), action());
    beginner.to("read");
    for (double value : new double[] {3.0, 2.3, 2.2, 2.0}) {
      beginner.give(new Answer.Value(value));
    }
    beginner.choose("adjustable").to("slacken");
    assertThat(beginner.prompt().said().text()).contains("241 mm radius");
    assertThat(beginner.prompt().said().text()).contains("1.5 mm higher");
  }

  /**
   * E1 stands 0.5 mm above the middle of its range and G2 0.3 mm: 1.0 and 0.6 mm come off, on
   * paper, and 4.5 and 3.5 mm of saddle leave 3.5 and 2.9.
   */
  @Test
  void aFixedSaddleIsHandedOverWithWhatComesOffAndWhatIsLeft() throws Exception {
    Play play = at("action", "saddles", 3.0, 2.3, 2.2, 2.3).choose("fixed");
    RefusedException e =
        assertThrows(RefusedException.class, () -> play.bench.answer(new Answer.Wrote("4.5")));
    assertThat(e).hasMessageThat().contains("write two figures in millimetres");
    play.give(new Answer.Wrote("4.5 mm 3,5 mm"));
    assertThat(play.prompt().said().text()).contains("1.5 mm off at E1, and 0.7 mm off at G2");
    assertThat(play.prompt().said().text())
        .contains("Left standing above the bridge: 3.0 mm at E1 and 2.8 mm at G2");
    Play unknown = at("action", "saddles", 3.0, 2.3, 2.2, 2.0).choose("fixed");
    unknown.give(new Answer.Wrote("-"));
    assertThat(unknown.prompt().said().text())
        .contains("1.5 mm off at E1, and nothing off at G2, in a straight line");
    assertThat(unknown.prompt().said().text()).contains("is not known");
  }

  /** The outer strings set a bridge on two posts; 0.5 mm at fret 12 is 1.0 mm at its end. */
  @Test
  void aBridgeOnPostsIsSetByItsOuterStrings() throws Exception {
    Play play = at("action", "saddles", 3.0, 2.3, 2.2, 1.5).choose("two-posts").to("set-posts");
    assertThat(play.prompt().said().text())
        .contains("Lower the bridge's end at E1 by 1.5 mm; raise the bridge's end at G2 by 0.9 mm");
    play.ok();
    assertThat(play.step()).isEqualTo("tune");
    Play inner = at("action", "saddles", 2.5, 3.3, 2.2, 2.0).choose("two-posts").to("set-posts");
    assertThat(inner.prompt().said().text()).contains("so the bridge stays");
  }

  /** 863.6 mm times 1 - 2^(-n/12), on paper: 48.5, 319.6, 431.8 and 540.1 mm. */
  @Test
  void withoutFretsTheirPlacesAreNamed() throws Exception {
    Play play = Play.of(Play.library("intake"), Role.BEGINNER, "bass-34", Style.MEDIUM);
    play.to("complaint").give(new Answer.Wrote("-")).choose("fretless");
    assertThat(play.prompt().said().text())
        .contains(
            "From the nut: fret 1 48.5 mm, fret 8 319.6 mm, fret 12 431.8 mm, fret 17 540.1 mm.");
  }

  /**
   * Half a millimetre too high or too low at fret 12 is 1.0 mm at the saddles. From a pocket's edge
   * they stand 863.6 / 2^(17/12) = 323.5 mm away, from its other end 75 mm less: 75 / 323.5 and 75
   * / 248.5 (derived; ShimTest turns a neck).
   */
  @Test
  void aShimIsReckonedAboutThePocketsOtherEnd() throws Exception {
    assertThat(shim("bottomed", 2.75, 2.3, 2.2, 2.0))
        .contains("a shim of 0.23 mm at the bridge side of a pocket 75 mm long");
    assertThat(shim("topped", 1.75, 2.3, 2.2, 2.0))
        .contains("a shim of 0.30 mm at the headstock side of a pocket 75 mm");
  }

  private static String shim(String end, double... values) throws Exception {
    Play play = at("action", "set-saddles", values);
    while (!play.step().equals("travel")) {
      play.to("read").give(new Answer.Value(values[0]));
    }
    return play.choose(end).choose("screws").prompt().said().text();
  }

  @Test
  void noShimIsReckonedWithoutAReading() throws Exception {
    Play play =
        Play.of(Play.library("neck-angle"), Role.TECHNICIAN, "bass-34", Style.MEDIUM, relief());
    play.choose("screws");
    assertThat(play.prompt().said().text()).contains("Without a reading of the action");
  }

  /** Doubling every diameter would pull four times as much; 5 % more pulls about 10 % more. */
  @Test
  void aThickerSetPullsMore() throws Exception {
    Play play = Play.of(Play.library("strings"), Role.BEGINNER, "bass-34", Style.MEDIUM);
    play.choose("other-set").give(new Answer.Wrote(".110 .090 .068 .047")).ok();
    assertThat(play.prompt().said().why()).containsMatch("(8|9|10|11) % more, so expect more");
    Play light = Play.of(Play.library("strings"), Role.BEGINNER, "bass-34", Style.MEDIUM);
    light.choose("other-set").give(new Answer.Wrote("95 75 55 40 thou")).ok();
    assertThat(light.prompt().said().why()).contains("% less, so expect less relief");
    Play words = Play.of(Play.library("strings"), Role.BEGINNER, "bass-34", Style.MEDIUM);
    words.choose("other-set").give(new Answer.Wrote("-")).ok();
    assertThat(words.prompt().said().why()).contains("its pull can't be reckoned");
  }

  /** A note of the diameters is as many as there are strings, each as thick as a string can be. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "hello|\"hello\" is not a length",
        ".105 .085 .065|there are 4 strings; give as many gauges, not 3",
        "46 36 26 17|no string is 46 mm thick; write inches as .105in",
        ".105 .085 .065 4.5in|no string is 114.3 mm thick",
      })
  void aNoteOfDiametersHasAForm(String typed, String why) throws Exception {
    Play play = Play.of(Play.library("strings"), Role.BEGINNER, "bass-34", Style.MEDIUM);
    play.choose("other-set");
    RefusedException e =
        assertThrows(RefusedException.class, () -> play.bench.answer(new Answer.Wrote(typed)));
    assertThat(e).hasMessageThat().startsWith("These are no diameters of its strings: " + why);
    assertThat(e)
        .hasMessageThat()
        .endsWith(
            "Write them with the lowest string first, for example .105 .085 .065 .045; or a hyphen"
                + " if nobody knows them.");
    assertThat(play.step()).isEqualTo("new-gauges");
  }

  @Test
  void aRecordOfAnEarlierVersionMaySayAnything() throws Exception {
    Play play = Play.of(Play.library("strings"), Role.BEGINNER, "bass-34", Style.MEDIUM);
    play.choose("other-set");
    play.events.add(new Event.Noted(play.bench.now(), "new-gauges", "the red packet"));
    play.resumeAfter(Duration.ZERO).to("other-one-by-one");
    assertThat(play.prompt().said().why()).contains("its pull can't be reckoned");
  }

  @Test
  void aNoteOfOtherThingsIsFree() throws Exception {
    Play play = Play.of(Play.library("intake"), Role.BEGINNER, "bass-34", Style.MEDIUM);
    while (!play.step().equals("complaint")) {
      play.ok();
    }
    play.give(new Answer.Wrote("hello"));
    assertThat(play.step()).isEqualTo("build");
  }

  /** 70 F (21 C) and 50 %: 9.2 % (Wood Handbook FPL-GTR-190, table 4-2). */
  @Test
  void theWoodsMoistureIsReckonedFromTheAir() throws Exception {
    Event.Before dry = new Event.Before(Play.NOON, Quantity.HUMIDITY, null, null, 30.0, List.of());
    Play play =
        Play.of(Play.library("season"), Role.BEGINNER, "bass-34", Style.MEDIUM, dry, relief());
    play.give(new Answer.Value(21)).give(new Answer.Value(50));
    assertThat(play.step()).isEqualTo("moisture");
    assertThat(play.prompt().said().text()).contains("comes to 9.2 % of moisture");
    assertThat(play.prompt().said().text()).contains("at the last visit it was 6.2 %, so +3.1");
  }

  @Test
  void theContactMapIsShownWhereItIsAskedForAndRestsOnEarlierReadingsToo() throws Exception {
    Play play =
        Play.of(Play.library("buzz"), Role.BEGINNER, "bass-34", Style.MEDIUM, relief(), action());
    assertThat(play.bench.overview().contact()).isNull();
    play.to("where");
    assertThat(play.bench.overview().contact()).isNotNull();
    Play unread = Play.of(Play.library("buzz"), Role.BEGINNER, "bass-34", Style.MEDIUM);
    assertThat(unread.to("where").bench.overview().contact()).isNull();
  }

  /** The stroke is the one that the middle of the windows just clears: common sense, no source. */
  @Test
  void whatStandsInTheMiddleClearsAndWhatIsLowerStrikes() throws Exception {
    assertThat(contact(2.4)).contains("should clear every fret");
    assertThat(contact(2.5)).contains("should clear every fret");
    String low = contact(2.0);
    assertThat(low).contains("For a medium touch, the lowest string should strike");
    assertThat(low).contains("an ideal string, even frets and a stroke that just clears");
    assertThat(low).contains("more action at fret 12");
  }

  private static String contact(double action) throws Exception {
    Play play = Play.of(Play.library("buzz"), Role.BEGINNER, "bass-34", Style.MEDIUM);
    play.to("heard").choose("hard").to("relief").read("0.35 passes 0.40 lifts");
    play.read("0.35 passes 0.40 lifts").to("low-strings").give(new Answer.Value(action));
    assertThat(play.step()).isEqualTo("owner-touch");
    return play.prompt().said().text();
  }
}
