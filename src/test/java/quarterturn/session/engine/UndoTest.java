package quarterturn.session.engine;

import static com.google.common.truth.Truth.assertThat;

import java.time.Duration;
import org.junit.jupiter.api.Test;
import quarterturn.procedure.condition.Feel;
import quarterturn.session.Answer;
import quarterturn.session.Prompt;
import quarterturn.unit.Turn;

/** The last turn is taken back by its opposite. The readings are invented. */
class UndoTest {
  @Test
  void aLooseningIsTakenBackWithTheStringsDetuned() throws Exception {
    Play play = Play.beginner("bass-34").to("found-low");
    play.read("0.05..0.10").read("0.05..0.10").read("0.05..0.10").to("turn-rod");
    assertThat(turn(play)).isEqualTo(Turn.EIGHTH.opposite());
    play.turned(Feel.SMOOTH).to("read-low").read("0.15..0.20").to("turn-rod");
    play.give(new Answer.Undo());
    assertThat(play.step()).isEqualTo("undo-detune");
    play.to("undo-turn");
    assertThat(turn(play)).isEqualTo(Turn.EIGHTH);
    play.turned(Feel.SMOOTH);
    assertThat(play.state().history().net()).isEqualTo(Turn.NONE);
  }

  @Test
  void anUndoThatIsTakenBackLeavesTheTurnAsItWas() throws Exception {
    Play play = Play.beginner("bass-34").to("found-low");
    play.read("0.05..0.10").read("0.05..0.10").read("0.05..0.10").to("turn-rod");
    play.turned(Feel.SMOOTH).to("read-low").read("0.15..0.20").to("turn-rod");
    play.give(new Answer.Undo()).give(new Answer.Correct());
    assertThat(play.step()).isEqualTo("seat");
    play.to("turn-rod");
    assertThat(turn(play).turns()).isLessThan(0.0);
  }

  @Test
  void aNutThatDidNotMoveIsNotWhatIsTakenBack() throws Exception {
    Play play = Play.beginner("bass-34").to("found-low");
    play.read("1.20..1.25").read("1.20..1.25").read("1.20..1.25").to("turn-rod");
    play.turned(Feel.SMOOTH).to("read-low").read("1.10..1.15").to("turn-rod");
    play.turned(0, Feel.STIFF).to("read-low").read("1.10..1.15").to("turn-rod");
    play.give(new Answer.Undo());
    assertThat(turn(play)).isEqualTo(Turn.EIGHTH.opposite());
  }

  @Test
  void whereTheRodNeverMovedThereIsNothingToTakeBack() throws Exception {
    Play play = Play.beginner("bass-34").to("found-low");
    play.read("1.20..1.25").read("1.20..1.25").read("1.20..1.25").to("turn-rod");
    play.turned(0, Feel.STIFF).to("read-low").read("1.20..1.25").to("turn-rod");
    assertThat(((Prompt.TurnRod) play.prompt()).canUndo()).isFalse();
  }

  @Test
  void anUndoThatComesTooLateForItsReadingIsAskedAnew() throws Exception {
    Play play = Play.beginner("bass-34").to("found-low");
    play.read("0.05..0.10").read("0.05..0.10").read("0.05..0.10").to("turn-rod");
    play.turned(Feel.SMOOTH).to("read-low").read("0.15..0.20").to("turn-rod");
    play.give(new Answer.Undo());
    play.bench.setClock(play.bench.now().plus(Duration.ofHours(8)));
    play.to("confirm").read("0.15..0.20").to("turn-rod");
    Prompt.TurnRod turn = (Prompt.TurnRod) play.prompt();
    assertThat(turn.turn().turns()).isLessThan(0.0);
    assertThat(turn.canUndo()).isTrue();
  }

  @Test
  void anUndoOfATurnThatWasLeftOpenTooLongGoesToAFreshReading() throws Exception {
    Play play = Play.beginner("bass-34").to("found-low");
    play.read("1.20..1.25").read("1.20..1.25").read("1.20..1.25").to("turn-rod");
    play.turned(Feel.SMOOTH).to("read-low").read("1.10..1.15").to("turn-rod");
    play.bench.setClock(play.bench.now().plus(Duration.ofHours(8)));
    play.give(new Answer.Undo());
    assertThat(play.state().pending().ended()).isNull();
    play.to("confirm").read("1.10..1.15").to("turn-rod");
    assertThat(turn(play).turns()).isGreaterThan(0.0);
    play.give(new Answer.Undo());
    assertThat(turn(play)).isEqualTo(Turn.EIGHTH.opposite());
  }

  @Test
  void anUndoThatABreakCutsShortIsAskedAnew() throws Exception {
    Play play = Play.beginner("bass-34").to("found-low");
    play.read("touches").read("touches").read("touches").to("turn-rod");
    assertThat(turn(play).turns()).isLessThan(0.0);
    play.turned(Feel.SMOOTH).to("read-low").read("touches").to("turn-rod");
    play.give(new Answer.Undo());
    assertThat(play.step()).isEqualTo("undo-detune");
    play.resumeAfter(Duration.ofDays(1)).ok().resumeAfter(Duration.ofDays(1)).ok();
    play.to("confirm").read("touches").to("turn-rod");
    assertThat(play.state().pending().ended()).isNull();
    assertThat(turn(play).turns()).isLessThan(0.0);
  }

  private static Turn turn(Play play) {
    return ((Prompt.TurnRod) play.prompt()).turn();
  }
}
