package quarterturn.session.engine;

import static com.google.common.truth.Truth.assertThat;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.time.Duration;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import quarterturn.procedure.condition.Feel;
import quarterturn.session.Answer;
import quarterturn.session.Corrections;
import quarterturn.session.Lists;
import quarterturn.session.Overview;
import quarterturn.session.PastTurns;
import quarterturn.session.RefusedException;
import quarterturn.unit.Turn;

/** Going back from a turn that is asked for never asks for it twice. The readings are invented. */
class TakenBackTurnTest {
  private static Play atTheTurn() throws Exception {
    return Play.beginner("bass-34")
        .to("found-low")
        .read("1.20..1.25")
        .read("1.20..1.25")
        .read("1.20..1.25")
        .to("turn-rod");
  }

  @Test
  void goingBackAsksWhetherTheTurnWasMade() throws Exception {
    Play play = atTheTurn().give(new Answer.Correct());
    assertThat(play.step()).isEqualTo(EngineQuestions.RECALL);
    play.choose(Recall.MADE.word());
    assertThat(play.state().history().net()).isEqualTo(Turn.EIGHTH);
    assertThat(play.step()).isEqualTo("key-out");
  }

  @Test
  void aTurnThatWasNotMadeIsAskedForOnlyAfterANewReading() throws Exception {
    Play play = atTheTurn().give(new Answer.Correct()).choose(Recall.NOT_MADE.word());
    assertThat(play.step()).isEqualTo("tune-again");
    play.to("confirm").read("1.20..1.25").to("turn-rod");
    assertThat(play.state().history().net()).isEqualTo(Turn.NONE);
  }

  @Test
  void aBreakAtTheQuestionLeavesItAsked() throws Exception {
    Play play = atTheTurn().give(new Answer.Correct()).resumeAfter(Duration.ofHours(1)).ok();
    assertThat(play.step()).isEqualTo(EngineQuestions.RECALL);
  }

  @Test
  void theRecordKeepsTheAnswerBeforeIt() throws Exception {
    Play play = atTheTurn();
    int standing = Corrections.standing(play.events).size();
    play.give(new Answer.Correct());
    assertThat(Corrections.withdrawn(play.events.subList(0, play.events.size() - 1))).isNull();
    assertThat(Corrections.standing(play.events)).hasSize(standing + 1);
  }

  @Test
  void afterAnUndoWasAskedForTheAnswerBeforeTheTurnIsTakenBack() throws Exception {
    Play play = atTheTurn().turned(Feel.SMOOTH).to("read-low").read("1.10..1.15").to("turn-rod");
    play.give(new Answer.Undo()).give(new Answer.Correct());
    assertThat(play.step()).isEqualTo(EngineQuestions.RECALL);
    play.choose(Recall.NOT_MADE.word());
    assertThat(play.state().history().net()).isEqualTo(Turn.EIGHTH);
  }

  private static Play saidUnsure() throws Exception {
    return atTheTurn().resumeAfter(Duration.ofMinutes(1)).ok().choose(Recall.UNSURE.word());
  }

  @Test
  void aTurnThatNobodyIsSureOfIsShownSo() throws Exception {
    Overview.Entry last = Lists.last(saidUnsure().bench.overview().trail(), entry -> true);
    assertThat(last).isInstanceOf(Overview.Entry.Turned.class);
    assertThat(last)
        .isEqualTo(
            new Overview.Entry.Turned(Objects.requireNonNull(last).at(), Turn.EIGHTH, null, false));
  }

  @Test
  void aTurnWithoutABreakIsSure() throws Exception {
    Overview overview = atTheTurn().turned(Feel.STIFF).bench.overview();
    assertThat(Lists.last(overview.trail(), entry -> true))
        .isEqualTo(
            new Overview.Entry.Turned(
                overview.trail().get(overview.trail().size() - 1).at(), Turn.EIGHTH, Feel.STIFF));
  }

  @Test
  void whatWasSaidOfItIsTakenBackAndAskedAgain() throws Exception {
    Play play = saidUnsure().give(new Answer.Correct());
    assertThat(play.step()).isEqualTo(EngineQuestions.RECALL);
    assertThat(play.state().history().turns()).isEmpty();
    play.choose(Recall.MADE.word());
    assertThat(play.state().history().net()).isEqualTo(Turn.EIGHTH);
    assertThat(PastTurns.of(play.events)).hasSize(1);
    assertThat(play.resumeAfter(Duration.ofMinutes(1)).state().history().turns()).hasSize(1);
  }

  @Test
  void aStopSignSaidAfterABreakIsNotTakenBack() throws Exception {
    Play play = atTheTurn().resumeAfter(Duration.ofMinutes(1)).ok().choose(Recall.NOISE.word());
    RefusedException refused =
        assertThrows(RefusedException.class, () -> play.bench.answer(new Answer.Correct()));
    assertThat(refused).hasMessageThat().contains("sign to stop");
  }
}
