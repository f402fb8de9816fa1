package quarterturn.session.engine;

import static com.google.common.truth.Truth.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quarterturn.procedure.condition.Feel;
import quarterturn.session.Answer;
import quarterturn.session.Prompt;
import quarterturn.unit.Turn;

/**
 * What a rod nut without resistance means depends on the way it was turned. Common practice, no
 * source; the readings are invented, the window is 0.30 to 0.45 mm.
 */
class FreeTurnTest {
  private static Play found(String reading) throws Exception {
    return Play.beginner("bass-34").found(reading);
  }

  /** One turn without resistance, and the same gap as before. */
  private static Play freeTurn(Play play, String reading) {
    return play.to("turn-rod").turned(Feel.FREE).to("read-low").read(reading);
  }

  @ParameterizedTest
  @CsvSource({
    "touches, fully-loose, fully-loose",
    "0.10..0.15, fully-loose, fully-loose",
    "0.60..0.65, rod-broken, no-response"
  })
  void twoFreeTurnsWithoutAnAnswer(String reading, String step, String outcome) throws Exception {
    Play play = freeTurn(found(reading), reading);
    if (!reading.equals("touches")) {
      play.to("soak-read").read(reading);
    }
    freeTurn(play, reading);
    assertThat(play.step()).isEqualTo(step);
    assertThat(((Prompt.HandOver) play.prompt()).outcome()).isEqualTo(outcome);
  }

  @Test
  void slackThatWasLetOutBeforeIsNamedBeforeABrokenRod() throws Exception {
    Play play = found("0.20..0.25").to("turn-rod").turned(Feel.SMOOTH);
    play.to("read-low").read("0.50..0.55");
    for (int i = 0; !play.prompt().ended(); i++) {
      assertThat(i).isLessThan(6);
      freeTurn(play, "0.50..0.55");
      if (play.step().equals("soak-tune")) {
        play.to("soak-read").read("0.50..0.55");
      }
    }
    assertThat(play.prompt().said().text()).contains("Unless somebody loosened it far before");
  }

  /** Tightened no further than a free loosening began, a nut still turns freely in a sound neck. */
  @Test
  void slackLetOutInTheSameSessionIsTakenUpBeforeAnAnswerIsExpected() throws Exception {
    Play play = freeTurn(found("0.20..0.25"), "0.20..0.25").to("soak-read").read("0.20..0.25");
    play.to("turn-rod").turned(Feel.SMOOTH).to("read-low").read("0.50..0.55");
    assertThat(freeTurn(play, "0.50..0.55").step()).isNotEqualTo("soak-tune");
  }

  /** A technician crosses the slack of a two-way rod by eighths; common practice, no source. */
  @Test
  void theSlackOfATwoWayRodIsCrossedByEighths() throws Exception {
    Play play = Play.technician("bass-34").found("0.60..0.65").to("rod-kind").choose("two-way");
    for (int i = 0; i < 4; i++) {
      if (play.prompt() instanceof Prompt.Wait) {
        play.give(new Answer.Waited("the nut turns freely")).to("confirm").read("0.60..0.65");
      }
      assertThat(play.to("turn-rod").prompt()).isInstanceOf(Prompt.TurnRod.class);
      assertThat(((Prompt.TurnRod) play.prompt()).turn()).isEqualTo(Turn.EIGHTH);
      freeTurn(play, "0.60..0.65");
      if (play.step().equals("soak-tune")) {
        play.to("soak-read").read("0.60..0.65");
      }
    }
    assertThat(play.step()).isEqualTo("slack-zone");
  }

  /** The first resistance ends it: what does not answer then is a repairer's. */
  @Test
  void theCrossingEndsAtTheFirstResistance() throws Exception {
    Play play = Play.technician("bass-34").found("0.60..0.65").to("rod-kind").choose("two-way");
    freeTurn(play, "0.60..0.65");
    play.to("soak-read").read("0.60..0.65").to("turn-rod").turned(Feel.SMOOTH);
    play.to("read-low").read("0.60..0.65");
    assertThat(play.step()).isEqualTo("slack-zone");
  }

  @ParameterizedTest
  @CsvSource({"0.60..0.65, 0.70..0.75", "0.15..0.20, 0.05..0.10"})
  void aFreeTurnThatWasTakenBackIsNotTakenForTheOtherWay(String before, String after)
      throws Exception {
    Play play = freeTurn(found(before), after);
    play.choose("alike").to("undo-turn").turned(Feel.FREE).to("read-low").read(after);
    assertThat(play.step()).isEqualTo("soak-tune");
  }
}
