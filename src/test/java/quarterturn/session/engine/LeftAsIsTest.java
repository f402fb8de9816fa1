package quarterturn.session.engine;

import static com.google.common.truth.Truth.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quarterturn.craft.Window;
import quarterturn.procedure.condition.Feel;
import quarterturn.procedure.condition.Role;
import quarterturn.procedure.condition.Verdict;
import quarterturn.procedure.kind.Style;
import quarterturn.session.Answer;
import quarterturn.session.Prompt;
import quarterturn.unit.Bracket;
import quarterturn.unit.BracketParser;

/**
 * A relief at the edge of its window may be left as it is, and is then not called in the window.
 * The window of a 30 in bass, played with medium touch, is 0.30 to 0.45 mm. Readings are invented.
 */
class LeftAsIsTest {
  private static Play found(Play play, String reading) {
    return play.found(reading);
  }

  private static Play out(Play play) {
    while (!(play.prompt() instanceof Prompt.Ending)) {
      play.ordinary();
    }
    return play;
  }

  private static String outcome(Play play) {
    return ((Prompt.Ending) out(play).prompt()).outcome();
  }

  /** By the definition: it straddles one end, or lies outside by less than a leaf. */
  @ParameterizedTest
  @CsvSource({
    "0.45..0.50, ABOVE", // begins where the window ends
    "0.48..0.53, ABOVE", // out by 0.03, less than its step of 0.05
    "0.49..0.54, ABOVE", // out by 0.04
    "0.50..0.55,", // out by a whole step
    "0.47..0.49,", // out by 0.02, the whole of its finer step
    "0.55..0.95,", // leaves far apart: out by 0.10, more than the gauge's step
    "0.40..0.50, ABOVE", // across the upper end
    "0.31..0.55, ABOVE", // across it, and its middle inside
    "0.25..0.30, BELOW",
    "0.20..0.25,",
    "0.20..0.35, BELOW",
    "0.25..0.50,", // across both ends
    "0.35..0.40,", // inside
    "0.30..0.45,", // inside, both ends included
    "touches,",
    "0.40 lifts,",
    "0.40 passes,"
  })
  void aReadingIsJustOutsideByItsOwnStep(String reading, Verdict side) {
    Bracket bracket = BracketParser.parse(reading, 0.05);
    assertThat(Verdict.near(bracket, new Window(0.30, 0.45), 0.05)).isEqualTo(side);
  }

  @ParameterizedTest
  @CsvSource({"0.45..0.50", "0.25..0.30"})
  void oneJustOutsideIsShownWhatATurnWouldChangeAndMayBeLeft(String reading) throws Exception {
    for (Role role : Role.values()) {
      Play play = found(Play.of(Play.relief(), role, "bass-30", Style.MEDIUM), reading);
      assertThat(play.step()).isEqualTo("nearly");
      String text = play.prompt().said().text();
      assertThat(text).contains(reading.replace("..", " to ") + " mm");
      assertThat(text).contains("0.30 to 0.45 mm");
      assertThat(text).containsMatch("in range is \\d+ % now");
      assertThat(text)
          .containsMatch(
              "turn, (tighter|looser), should give .* \\(nine times in ten\\), with a chance of"
                  + " \\d+ %");
      assertThat(text).contains("25 min");
      assertThat(text).contains("action and intonation");
      play.choose("leave");
      assertThat(outcome(play)).isEqualTo("left-as-is");
      assertThat(play.state().history().turns()).isEmpty();
    }
  }

  /** Half of such a bracket may lie outside, wherever its middle is. */
  @ParameterizedTest
  @CsvSource({"0.40..0.50", "0.36..0.52", "0.26..0.36", "0.20..0.40"})
  void oneAcrossAnEndIsNeverInTheWindow(String reading) throws Exception {
    Play play = found(Play.beginner("bass-30"), reading);
    assertThat(play.step()).isEqualTo("finer");
    play.read(reading);
    assertThat(play.step()).isEqualTo("nearly");
    assertThat(outcome(play.choose("leave"))).isEqualTo("left-as-is");
  }

  @Test
  void whereNoFinerLeavesAreToHandItMayBeLeftToo() throws Exception {
    Play play = found(Play.beginner("bass-30"), "0.40..0.50");
    play.give(new Answer.CannotMeasure());
    assertThat(play.step()).isEqualTo("nearly");
  }

  @Test
  void oneWhoGoesOnTurnsTheWayThatHelps() throws Exception {
    Play above = found(Play.beginner("bass-30"), "0.36..0.52").read("0.36..0.52");
    above.choose("go-on").to("turn-rod");
    assertThat(((Prompt.TurnRod) above.prompt()).direction()).isEqualTo("tighten");
    // Tightening works against the strings, so they were slackened first.
    assertThat(above.state().bench().has(quarterturn.procedure.Fact.DETUNED)).isTrue();
    Play below = found(Play.beginner("bass-30"), "0.26..0.36").read("0.26..0.36");
    below.choose("go-on").to("turn-rod");
    assertThat(((Prompt.TurnRod) below.prompt()).direction()).isEqualTo("loosen");
  }

  @ParameterizedTest
  @CsvSource({"0.50..0.55", "0.20..0.25", "0.60..0.65", "touches"})
  void aNeckThatIsPlainlyOutIsNotOfferedIt(String reading) throws Exception {
    Play play = found(Play.beginner("bass-30"), reading);
    assertThat(play.step()).isNotEqualTo("nearly");
    boolean above = reading.startsWith("0.5") || reading.startsWith("0.6");
    assertThat(((Prompt.TurnRod) play.to("turn-rod").prompt()).direction())
        .isEqualTo(above ? "tighten" : "loosen");
    assertThat(play.state().log().toString()).doesNotContain("step=nearly");
  }

  @Test
  void afterATurnItMayBeLeftAndTheNextSessionStartsFromIt() throws Exception {
    Play play = found(Play.beginner("bass-30"), "0.60..0.65").to("turn-rod");
    play.turned(Feel.SMOOTH).to("read-low").read("0.45..0.50");
    assertThat(play.step()).isEqualTo("nearly");
    assertThat(outcome(play.choose("leave"))).isEqualTo("left-as-is");
    String said = play.prompt().said().text();
    assertThat(said).contains("left as it is");
    assertThat(said).doesNotContain("is in range");
    var past = quarterturn.session.PastTurns.of(play.events);
    assertThat(past.get(0).after()).isEqualTo(new Bracket(0.45, 0.50));
  }

  @Test
  void aNeckWhoseRodNobodyHasFoundMayBeLeftInsteadOfHandedOver() throws Exception {
    Play play = found(Play.beginner("bass-30"), "0.45..0.50");
    assertThat(play.step()).isEqualTo("nearly");
    assertThat(play.prompt().said().text()).contains("With a rod that works");
    play.choose("go-on").to("rod-place").choose("none");
    assertThat(play.step()).isEqualTo(EngineQuestions.ENDS);
    play.choose(EngineQuestions.TAKE_BACK).give(new Answer.Correct()).give(new Answer.Correct());
    assertThat(play.step()).isEqualTo("nearly");
    assertThat(outcome(play.choose("leave"))).isEqualTo("left-as-is");
    assertThat(play.state().history().turns()).isEmpty();
  }

  @Test
  void theCheckOfTheReliefKeepsTheTwoApart() throws Exception {
    for (String reading : new String[] {"0.40..0.50", "0.45..0.50"}) {
      Play check = Play.of(Play.library("relief-check"), Role.BEGINNER, "bass-30", Style.MEDIUM);
      check.to("low").read(reading).read(reading);
      assertThat(check.step()).isEqualTo("set-it");
      assertThat(check.prompt().said().text()).contains("should give");
      assertThat(outcome(check.choose("later"))).isEqualTo("left-as-is");
    }
    Play out = Play.of(Play.library("relief-check"), Role.BEGINNER, "bass-30", Style.MEDIUM);
    out.to("low").read("0.60..0.65").read("0.60..0.65").choose("later");
    assertThat(outcome(out)).isEqualTo("out-of-window");
  }
}
