package quarterturn.session.engine;

import static com.google.common.truth.Truth.assertThat;

import org.junit.jupiter.api.Test;
import quarterturn.procedure.condition.Feel;
import quarterturn.procedure.condition.Role;
import quarterturn.session.Answer;
import quarterturn.session.Prompt;
import quarterturn.unit.Bracket;

/** A day's half turn is never exceeded. The readings are invented. */
class DayLimitTest {
  @Test
  void whatIsLeftOfADayIsNotRoundedUpToATurn() throws Exception {
    Play play = Play.beginner("bass-34").to("found-low");
    play.read("1.20..1.25").read("1.20..1.25").read("1.20..1.25").to("turn-rod");
    play.turned(0.125, Feel.SMOOTH).to("read-low").read("1.10..1.15").to("turn-rod");
    // Freed by a sixteenth back and forth, it was moved by a quarter in all.
    play.turned(0.20, Feel.SMOOTH).to("read-low").read("0.95..1.00").to("turn-rod");
    assertThat(play.prompt()).isInstanceOf(Prompt.Wait.class);
    assertThat(((Prompt.Wait) play.prompt()).rest()).isTrue();
    play.waited();
    assertThat(play.step()).isEqualTo("tune-again");
  }

  @Test
  void aTurnInTheVerySecondOfALiftingCounts() throws Exception {
    Play play = Play.technician("bass-34");
    double gap = 2.0;
    int lifted = 0;
    double since = 0;
    for (int i = 0; i < 300 && !play.prompt().ended(); i++) {
      if (play.prompt() instanceof Prompt.TurnRod) {
        // Half of what is asked, so that many turns are made before a whole one is reached.
        double turns = ((Prompt.TurnRod) play.prompt()).turn().turns() / 2;
        gap -= turns;
        since += turns;
        assertThat(since).isAtMost(0.5);
        play.turned(turns, Feel.SMOOTH);
      } else if (play.prompt() instanceof Prompt.Wait wait) {
        since = wait.rest() ? 0 : since;
        lifted += wait.rest() ? 1 : 0;
        play.give(new Answer.Waited("asked for by the owner"));
      } else if (play.prompt() instanceof Prompt.Measure measure && measure.which() != null) {
        play.read(new Bracket(gap, gap + 0.05));
      } else {
        play.ordinary();
      }
    }
    assertThat(play.bench.now()).isEqualTo(Play.NOON);
    assertThat(play.state().started().role()).isEqualTo(Role.TECHNICIAN);
    assertThat(lifted).isAtLeast(2);
  }
}
