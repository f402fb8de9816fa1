package quarterturn.session.engine;

import static com.google.common.truth.Truth.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import quarterturn.procedure.condition.Feel;
import quarterturn.session.Prompt;

/** What is said of key and strings to who leaves in the middle of a turn. */
class PartingTest {
  private static final String KEY = "Take the key out of the truss rod nut.";
  private static final String STRINGS = "Tune all strings back to pitch.";

  private static List<String> parting(Play play) {
    return play.bench.overview().parting();
  }

  @Test
  void keyAndStringsAreSpokenOfInTheMiddleOfATurnAlone() throws Exception {
    Play play = Play.beginner("bass-34").to("found-low");
    assertThat(parting(play)).isEmpty();
    play.read("0.60..0.65").read("0.60..0.65").read("0.60..0.65").to("turn-rod");
    while (!(play.prompt() instanceof Prompt.TurnRod)) {
      play.ok();
    }
    assertThat(parting(play))
        .containsExactly(
            KEY, STRINGS, "When you come back, you are asked how far the nut was turned.")
        .inOrder();
    play.turned(0.125, Feel.SMOOTH);
    assertThat(parting(play)).containsExactly(KEY, STRINGS).inOrder();
    play.to("read-low");
    assertThat(parting(play)).isEmpty();
  }
}
