package quarterturn.session.engine;

import static com.google.common.truth.Truth.assertThat;

import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quarterturn.procedure.condition.Feel;
import quarterturn.procedure.condition.Role;
import quarterturn.procedure.kind.Style;
import quarterturn.session.Answer;
import quarterturn.session.Event;
import quarterturn.session.Prompt;
import quarterturn.unit.Turn;

/** The relief procedure as three people would meet it. Necks and readings are invented. */
class ReliefTest {
  private static Prompt.TurnRod turn(Play play) {
    return (Prompt.TurnRod) play.prompt();
  }

  @Test
  void tooMuchReliefIsTightenedIntoTheWindow() throws Exception {
    BenchNeck neck = new BenchNeck(0.62, 0.20);
    Play play = neck.playOut(Play.beginner("bass-34"));
    assertThat(play.prompt()).isInstanceOf(Prompt.Done.class);
    assertThat(((Prompt.Done) play.prompt()).outcome()).isEqualTo("in-window");
    assertThat(neck.gap).isAtLeast(0.30);
    assertThat(neck.gap).isAtMost(0.45);
    assertThat(play.state().history().net().turns()).isGreaterThan(0.0);
  }

  @Test
  void aBackBowedNeckIsLoosenedIntoTheWindowOverDays() throws Exception {
    BenchNeck neck = new BenchNeck(-0.20, 0.20);
    Play play = neck.playOut(Play.beginner("bass-34"));
    assertThat(((Prompt.Done) play.prompt()).outcome()).isEqualTo("in-window");
    assertThat(neck.gap).isAtLeast(0.30);
    assertThat(neck.gap).isAtMost(0.45);
    // More than half a turn was needed, so there was a day's rest on the way.
    assertThat(play.state().history().net().turns()).isLessThan(-0.5);
    assertThat(Duration.between(play.events.get(0).at(), play.bench.now()).toHours()).isAtLeast(24);
  }

  @Test
  void aNeckInItsWindowIsLeftAlone() throws Exception {
    Play play = new BenchNeck(0.37, 0.2).playOut(Play.beginner("bass-34"));
    assertThat(play.step()).isEqualTo("nothing-to-turn");
    assertThat(play.state().history().turns()).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({
    "bass-34",
    "bass-30",
    "bass-35",
    "electric-25",
    "electric-24",
    "acoustic-steel",
    "acoustic-twelve"
  })
  void everyKindAndStyleReachesItsWindow(String kind) throws Exception {
    for (Style style : Play.relief().kind(kind).styles()) {
      for (double start : new double[] {-0.05, 0.02, 0.8}) {
        BenchNeck neck = new BenchNeck(start, 0.16);
        Play play = neck.playOut(Play.of(Play.relief(), Role.BEGINNER, kind, style));
        assertThat(((Prompt.Done) play.prompt()).outcome()).isEqualTo("in-window");
        var window = Play.relief().kind(kind).target(style).window();
        assertThat(neck.gap).isAtLeast(window.lowMm() - 0.05);
        assertThat(neck.gap).isAtMost(window.highMm() + 0.05);
      }
    }
  }

  @Test
  void aDeadRodIsFoundOutInTwoMoves() throws Exception {
    Play play = new BenchNeck(0.72, 0).playOut(Play.beginner("bass-34"));
    assertThat(((Prompt.HandOver) play.prompt()).outcome()).isEqualTo("no-response");
    assertThat(play.state().history().turns()).hasSize(2);
  }

  @Test
  void aDeadRodUnderATouchingStringEndsBeforeAFullTurn() throws Exception {
    Play play = new BenchNeck(-0.3, 0).playOut(Play.beginner("bass-34"));
    assertThat(((Prompt.HandOver) play.prompt()).outcome()).isEqualTo("no-response");
    assertThat(play.state().history().turns().size()).isAtMost(4);
    assertThat(play.state().history().net().size().turns()).isLessThan(1.0);
  }

  @Test
  void aReversedRodIsTakenBackAndHandedOver() throws Exception {
    BenchNeck neck = new BenchNeck(0.72, -0.24);
    Play play = neck.playOut(Play.beginner("bass-34"));
    assertThat(((Prompt.HandOver) play.prompt()).outcome()).isEqualTo("wrong-way");
    assertThat(play.state().history().net().turns()).isWithin(1e-9).of(0);
    assertThat(neck.gap).isWithin(1e-9).of(0.72);
  }

  @ParameterizedTest
  @CsvSource({"JAMMED,jammed", "NOISE,noise", "SLIPPED,stripped"})
  void aStopSignEndsInAHandOver(Feel feel, String outcome) throws Exception {
    Play play = Play.beginner("bass-34").to("found-low").read("0.60 passes 0.65 lifts");
    play.read("0.60 passes 0.65 lifts").read("0.55 passes 0.60 lifts").to("turn-rod");
    play.turned(feel == Feel.JAMMED ? 0 : turn(play).turn().turns(), feel);
    assertThat(((Prompt.HandOver) play.prompt()).outcome()).isEqualTo(outcome);
  }

  @Test
  void aNeckWithoutARodIsLeftToARepairerWithItsReading() throws Exception {
    Play play = Play.beginner("bass-34").found("0.60..0.65").to("rod-place").choose("none");
    assertThat(play.step()).isEqualTo(EngineQuestions.ENDS);
    play.choose("end");
    assertThat(((Prompt.Done) play.prompt()).outcome()).isEqualTo("no-rod");
    assertThat(play.prompt().said().text()).contains("0.60 to 0.65 mm");
  }

  @Test
  void aKeyForARodInThePocketIsTriedOnlyOnceTheNeckIsLifted() throws Exception {
    Play play = Play.technician("bass-34").found("0.60..0.65").to("rod-place").choose("pocket");
    play.choose("single").to("pocket-fit");
    assertThat(play.state().position().chosen()).doesNotContainKey("key-fit");
    assertThat(play.bench.standing()).contains("neck loose in its pocket");
    play.choose("no-tool").to("pocket-no-key");
    assertThat(((Prompt.Done) play.prompt()).outcome()).isEqualTo("get-key");
    assertThat(play.bench.standing()).doesNotContain("neck loose");
    assertThat(play.state().history().turns()).isEmpty();
  }

  @Test
  void aRodInThePocketIsForARepairerUnlessATechnicianIsAtTheBench() throws Exception {
    Play beginner = Play.beginner("bass-34").found("0.60..0.65").to("rod-place");
    beginner.choose("pocket").choose("single").choose("end");
    assertThat(beginner.step()).isEqualTo("pocket-repairer");

    Play technician = Play.technician("bass-34").found("0.60..0.65").to("rod-place");
    technician.choose("pocket").to("pocket-turn");
    assertThat(turn(technician).turn()).isEqualTo(Turn.EIGHTH);
    assertThat(technician.bench.standing()).contains("neck loose in its pocket");
    technician.turned(Feel.SMOOTH).to("read-low");
    assertThat(technician.bench.standing()).doesNotContain("neck loose");
  }

  @Test
  void theFirstMoveOnAnUnknownNeckIsAnEighthAndNoneIsAboveAQuarter() throws Exception {
    Play play = Play.beginner("bass-34").to("found-low");
    play.read("1.20..1.30").read("1.20..1.30").read("1.20..1.30").to("turn-rod");
    // A quarter turn and the direction: common practice, no source.
    assertThat(turn(play).turn()).isEqualTo(Turn.EIGHTH);
    assertThat(turn(play).direction()).isEqualTo("tighten");
    play.turned(Feel.SMOOTH).to("read-low").read("1.10..1.15").to("turn-rod");
    assertThat(turn(play).turn()).isEqualTo(Turn.QUARTER);
  }

  @Test
  void aKnownNeckNeedsNoProbe() throws Exception {
    var past =
        new Event.Past(
            Play.NOON.minus(Duration.ofDays(90)),
            Turn.EIGHTH,
            new quarterturn.unit.Bracket(0.60, 0.65),
            new quarterturn.unit.Bracket(0.50, 0.55));
    Play play =
        Play.of(Play.relief(), Role.BEGINNER, "bass-34", Style.MEDIUM, List.of(past))
            .to("found-low");
    play.read("0.60..0.65").read("0.60..0.65").read("0.60..0.65").to("turn-rod");
    assertThat(turn(play).turn().turns()).isGreaterThan(0.125);
  }

  @Test
  void itSaysWhatItExpectsAndAfterwardsWhetherTheNeckDidThat() throws Exception {
    Play play = Play.beginner("bass-34").to("found-low");
    play.read("0.60..0.65").read("0.60..0.65").read("0.60..0.65").to("turn-rod");
    Prompt.Expected expected = turn(play).expected();
    assertThat(expected).isNotNull();
    assertThat(expected.lowMm()).isLessThan(0.55);
    assertThat(expected.highMm()).isGreaterThan(0.50);
    play.turned(Feel.SMOOTH).to("read-low").read("0.50..0.55");
    assertThat(String.join(" ", play.prompt().said().notes())).contains("The neck did that.");
  }

  @Test
  void aReadingAcrossTheEdgeIsAskedForAgainAndSaysSo() throws Exception {
    Play play = Play.beginner("bass-30").to("found-low");
    play.read("0.40..0.50").read("0.40..0.50").read("0.40..0.50");
    assertThat(play.step()).isEqualTo("finer");
    assertThat(play.prompt().said().text()).contains("too near the limit");
  }

  @Test
  void aBeginnerRestsAfterHalfATurnAndATechnicianMayLiftItWithAReason() throws Exception {
    for (Role role : Role.values()) {
      Play play = Play.of(Play.relief(), role, "bass-34", Style.MEDIUM).to("found-low");
      play.read("1.50..1.55").read("1.50..1.55").read("1.50..1.55").to("turn-rod");
      play.turned(Feel.SMOOTH).to("read-low").read("1.40..1.45").to("turn-rod");
      // Freed by a sixteenth back and forth, and tightened by an eighth: a quarter is left.
      assertThat(turn(play).turn()).isEqualTo(Turn.QUARTER);
      play.turned(Feel.SMOOTH).to("read-low").read("1.10..1.15");
      assertThat(play.step()).isEqualTo("rest");
      Prompt.Wait rest = (Prompt.Wait) play.prompt();
      assertThat(rest.length()).isEqualTo(Duration.ofHours(24));
      assertThat(rest.mayLift()).isEqualTo(role == Role.TECHNICIAN);
      if (role == Role.TECHNICIAN) {
        play.give(new Answer.Waited("known neck, player waits"));
        play.to("confirm").read("1.10..1.15").to("turn-rod");
        assertThat(turn(play).turn()).isEqualTo(Turn.QUARTER);
      }
    }
  }

  @Test
  void theLastTurnCanBeTakenBackAtATurn() throws Exception {
    Play play = Play.beginner("bass-34").to("found-low");
    play.read("0.90..0.95").read("0.90..0.95").read("0.90..0.95").to("turn-rod");
    play.turned(Feel.SMOOTH).to("read-low").read("0.80..0.85").to("turn-rod");
    play.give(new Answer.Undo());
    assertThat(turn(play).turn()).isEqualTo(new Turn(-0.125));
    assertThat(turn(play).direction()).isEqualTo("loosen");
  }

  @Test
  void theLastAnswerCanBeCorrectedAndTheCorrectionIsANewEvent() throws Exception {
    Play play = Play.beginner("bass-34").to("found-low").read("0.06..0.65");
    int before = play.events.size();
    play.give(new Answer.Correct());
    assertThat(play.step()).isEqualTo("found-low");
    play.read("0.60..0.65");
    assertThat(play.events).hasSize(before + 2);
    assertThat(play.state().history().readings().stream().filter(Reading::relief)).hasSize(1);
  }

  @Test
  void aTurnOtherThanAskedIsToldAndCounted() throws Exception {
    for (double turned : new double[] {0.25, -0.125}) {
      Play play = Play.beginner("bass-34").to("found-low");
      play.read("0.90..0.95").read("0.90..0.95").read("0.90..0.95").to("turn-rod");
      play.turned(turned, Feel.SMOOTH);
      assertThat(String.join(" ", play.prompt().said().notes())).contains("It counts");
      assertThat(play.state().history().net().turns()).isEqualTo(turned);
    }
  }

  @Test
  void twistIsSeenOnTheSecondString() throws Exception {
    Play play = Play.beginner("bass-34").to("found-low");
    play.read("0.60..0.65").read("0.60..0.65").read("0.40..0.45");
    assertThat(play.step()).isEqualTo("sight");
    play.choose("crossed").choose("end");
    assertThat(((Prompt.HandOver) play.prompt()).outcome()).isEqualTo("twist");
  }

  /** How far a string that touches is bowed back can't be read: common practice, no source. */
  @Test
  void aStringThatTouchesWhileTheOtherIsInRangeIsATwist() throws Exception {
    Play play = Play.of(Play.relief(), Role.BEGINNER, "electric-24", Style.LIGHT).to("found-low");
    play.read("0.10..0.15").read("0.10..0.15").read("touches");
    assertThat(play.step()).isEqualTo("sight");
  }
}
