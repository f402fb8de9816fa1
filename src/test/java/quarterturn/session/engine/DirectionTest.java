package quarterturn.session.engine;

import static com.google.common.truth.Truth.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import quarterturn.procedure.condition.Feel;
import quarterturn.procedure.condition.Response;
import quarterturn.session.Answer;
import quarterturn.session.Prompt;
import quarterturn.unit.Turn;

/** No turn without a known direction. The readings are invented; the window is 0.30 to 0.45 mm. */
class DirectionTest {
  private static Play found(String reading) throws Exception {
    return Play.beginner("bass-34").found(reading);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "card lifts",
        "0.50 lifts",
        "0.40 lifts",
        "0.10 passes",
        "0.35 passes",
        "0.05 passes 1.00 lifts"
      })
  void aReadingThatCouldMeanEitherWayIsNotTurnedOn(String reading) throws Exception {
    Play play = found(reading);
    assertThat(play.step()).isEqualTo("finer");
    play.read(reading);
    assertThat(play.step()).isEqualTo("no-direction");
    play.choose("try-again").read("0.60 passes 0.65 lifts").to("turn-rod");
    assertThat(((Prompt.TurnRod) play.prompt()).direction()).isEqualTo("tighten");
  }

  @Test
  void whereNoBetterReadingCanBeHadTheSessionEnds() throws Exception {
    Play play = found("card lifts").give(new Answer.CannotMeasure()).choose("stop");
    assertThat(play.step()).isEqualTo(EngineQuestions.ENDS);
    play.choose("end");
    assertThat(((Prompt.Done) play.prompt()).outcome()).isEqualTo("not-measured");
  }

  @ParameterizedTest
  @ValueSource(strings = {"card passes", "1.00 passes", "0.45 passes"})
  void oneEndIsEnoughWhereItLiesPastTheWindow(String reading) throws Exception {
    Play play = found(reading).to("turn-rod");
    assertThat(((Prompt.TurnRod) play.prompt()).turn()).isGreaterThan(Turn.NONE);
  }

  @Test
  void oneEndBelowTheWindowIsEnoughToLoosen() throws Exception {
    Play play = found("0.05 lifts").to("turn-rod");
    assertThat(((Prompt.TurnRod) play.prompt()).turn()).isLessThan(Turn.NONE);
  }

  @Test
  void aReadingWithAnUnknownEndShowsNoAnswerThatItCouldNotHave() throws Exception {
    Play play = found("0.60..0.65").to("turn-rod").turned(Feel.SMOOTH);
    play.to("read-low").read("0.10 passes");
    assertThat(play.state().history().response()).isEqualTo(Response.UNSEEN);
  }
}
