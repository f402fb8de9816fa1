package quarterturn.session.engine;

import static com.google.common.truth.Truth.assertThat;

import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;
import quarterturn.procedure.condition.Role;
import quarterturn.procedure.kind.Style;
import quarterturn.session.Event;
import quarterturn.session.Prompt;
import quarterturn.unit.Bracket;
import quarterturn.unit.Turn;

/** A neck whose relief is not where the last session left it. */
class JumpTest {
  private static final Bracket FOUND = new Bracket(0.60, 0.65);
  private static final Bracket LEFT = new Bracket(0.35, 0.40);

  /** A session in which the neck was brought into its window. */
  private static Event.Past session(int hoursAgo, Bracket after) {
    return new Event.Past(Play.NOON.minus(Duration.ofHours(hoursAgo)), Turn.QUARTER, FOUND, after);
  }

  private static Play now(Bracket reading, Event.Past... past) throws Exception {
    Play play = Play.of(Play.relief(), Role.TECHNICIAN, "bass-34", Style.MEDIUM, List.of(past));
    return play.to("found-low").read(reading).read(reading).read(reading);
  }

  private static Prompt asked(Play play) {
    while (!(play.prompt() instanceof Prompt.TurnRod)
        && !play.prompt().said().step().equals(EngineQuestions.SINCE)) {
      play.ordinary();
    }
    return play.prompt();
  }

  private static List<String> chosen(Play play) {
    return play.state().log().stream()
        .filter(Event.Chose.class::isInstance)
        .map(Event.Chose.class::cast)
        .map(chose -> chose.step() + ": " + chose.option())
        .toList();
  }

  @Test
  void afterSetBacksTheRodIsNotDoubtedAndTheFirstMoveIsSmall() throws Exception {
    Play play = now(FOUND, session(60, LEFT), session(45, LEFT), session(30, LEFT));
    assertThat(asked(play)).isInstanceOf(Prompt.Choose.class);
    play.choose("turned");
    Prompt.TurnRod turn = (Prompt.TurnRod) asked(play);
    assertThat(turn.turn()).isEqualTo(Turn.EIGHTH);
    assertThat(turn.said().why()).doesNotContain("not seen to answer");
    assertThat(String.join(" ", turn.said().notes())).doesNotContainMatch("without effect: \\d\\d");
    assertThat(chosen(play)).contains(EngineQuestions.SINCE + ": turned");
  }

  @Test
  void whereNothingJumpedNothingIsAsked() throws Exception {
    Bracket high = new Bracket(0.50, 0.55);
    Play play = now(high, session(30, high));
    assertThat(asked(play)).isInstanceOf(Prompt.TurnRod.class);
  }
}
