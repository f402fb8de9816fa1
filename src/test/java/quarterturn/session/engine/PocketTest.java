package quarterturn.session.engine;

import static com.google.common.truth.Truth.assertThat;

import org.junit.jupiter.api.Test;
import quarterturn.procedure.Fact;
import quarterturn.procedure.condition.Feel;
import quarterturn.session.Event;
import quarterturn.session.Prompt;
import quarterturn.unit.Turn;

/** A rod nut hidden in the neck pocket: each turn takes the neck off. Readings are invented. */
class PocketTest {
  @Test
  void aTurnThatMovedTheNeckTheWrongWayIsTakenBackWithTheNeckOff() throws Exception {
    Play play = Play.technician("bass-34").found("1.20..1.25").to("rod-place").choose("pocket");
    play.to("pocket-turn");
    assertThat(play.state().bench().has(Fact.NECK_LOOSE)).isTrue();
    assertThat(((Prompt.TurnRod) play.prompt()).limit()).isEqualTo(Turn.EIGHTH);
    play.turned(Feel.SMOOTH).to("read-low").read("1.40..1.45").choose("alike");
    assertThat(play.step()).isEqualTo("pocket-slacken");
    play.to("pocket-undo");
    assertThat(play.state().bench().has(Fact.NECK_LOOSE)).isTrue();
    assertThat(((Prompt.TurnRod) play.prompt()).turn()).isEqualTo(Turn.EIGHTH.opposite());
    play.turned(Feel.SMOOTH);
    assertThat(play.step()).isEqualTo("pocket-refit");
  }

  @Test
  void whatChangedIsAskedOnceHoweverOftenTheNeckComesOff() throws Exception {
    Play play = Play.technician("bass-34").found("1.20..1.25").to("rod-place").choose("pocket");
    play.to("pocket-turn").turned(Feel.SMOOTH).to("read-low").read("1.10..1.15");
    play.to("pocket-turn");
    assertThat(
            play.events.stream()
                .filter(
                    event -> event instanceof Event.Chose chose && chose.step().equals("changed"))
                .count())
        .isEqualTo(1);
  }
}
