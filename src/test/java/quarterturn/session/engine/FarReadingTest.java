package quarterturn.session.engine;

import static com.google.common.truth.Truth.assertThat;

import java.time.Duration;
import org.junit.jupiter.api.Test;
import quarterturn.procedure.condition.Feel;
import quarterturn.procedure.condition.Response;

/** A reading far from what a turn should do is taken once more. The readings are invented. */
class FarReadingTest {
  private static final String ONCE_MORE = "Take the gauges out and read it once more.";

  /** At the reading after a first turn that loosens, where the string touched. */
  private static Play loosened(Play play) throws Exception {
    return play.found("touches").to("turn-rod").turned(Feel.SMOOTH).to("read-low");
  }

  private static Play loosened() throws Exception {
    return loosened(Play.beginner("bass-34"));
  }

  @Test
  void nothingIsDecidedOnItBeforeItWasReadAgain() throws Exception {
    Play play = loosened().read("0.90..1.00");
    assertThat(play.step()).isEqualTo("read-low");
    assertThat(play.prompt().said().notes()).hasSize(1);
    assertThat(play.prompt().said().notes().get(0))
        .startsWith("0.90 to 1.00 mm is far from what this turn should do (up to ");
    assertThat(play.prompt().said().notes().get(0)).endsWith(ONCE_MORE);
    assertThat(play.state().history().response()).isEqualTo(Response.UNSEEN);
  }

  @Test
  void aSecondThatAgreesStands() throws Exception {
    Play play = loosened().read("0.90..1.00").read("0.90..1.00");
    assertThat(play.step()).isNotEqualTo("read-low");
    assertThat(play.state().history().response()).isEqualTo(Response.MOVED);
  }

  @Test
  void aSecondAsExpectedStandsAndTheFirstIsForgotten() throws Exception {
    Play play = loosened().read("0.90..1.00").read("0.10..0.15");
    assertThat(
            play.state().history().readings().stream().map(r -> String.valueOf(r.read().bracket())))
        .doesNotContain("0.90 to 1.00 mm");
  }

  @Test
  void oneAsExpectedIsNotReadTwice() throws Exception {
    assertThat(loosened().read("0.10..0.15").step()).isNotEqualTo("read-low");
    assertThat(loosened().read("touches").step()).isNotEqualTo("read-low");
  }

  @Test
  void theNextTurnsReadingIsHeldToItsOwnExpectation() throws Exception {
    Play play = loosened().read("0.90..1.00").read("0.10..0.15");
    play.to("turn-rod").turned(Feel.SMOOTH).to("read-low").read("1.50..1.55");
    assertThat(play.step()).isEqualTo("read-low");
    assertThat(play.prompt().said().notes().get(0)).endsWith(ONCE_MORE);
  }

  @Test
  void aTurnOfUnknownSizeLeavesNothingToExpect() throws Exception {
    Play play = Play.beginner("bass-34").found("touches").to("turn-rod");
    play.resumeAfter(Duration.ofMinutes(1)).ok().choose(Recall.UNSURE.word()).to("read-low");
    assertThat(play.read("0.90..1.00").step()).isNotEqualTo("read-low");
  }

  @Test
  void onlyATechnicianIsToldThatItGoesStepByStep() throws Exception {
    Play play = loosened(Play.technician("bass-34")).read("0.90..1.00");
    assertThat(play.prompt().said().notes()).hasSize(2);
    play.to("read-low").read("0.90..1.00");
    assertThat(play.state().history().response()).isEqualTo(Response.MOVED);
  }
}
