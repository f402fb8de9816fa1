package quarterturn.screen.page;

import static com.google.common.truth.Truth.assertThat;

import org.junit.jupiter.api.Test;
import quarterturn.rehearsal.PracticeBench;
import quarterturn.rehearsal.simulated.NamedNeck;
import quarterturn.rehearsal.simulated.Practising;
import quarterturn.screen.terminal.Canvas;
import quarterturn.session.Answer;
import quarterturn.session.Prompt;

/** The contact map in the full screen, on an invented bass that buzzes. */
class ContactPictureTest {
  private static PracticeBench atTheMap() throws Exception {
    PracticeBench bench = Practising.on(NamedNeck.RIGHT, "setup", "bass-34");
    for (int i = 0; i < 500 && !bench.prompt().said().step().equals("where"); i++) {
      boolean asked = bench.prompt() instanceof Prompt.Choose;
      String step = bench.prompt().said().step();
      Answer answer = bench.truth();
      if (asked && step.equals("play")) {
        answer = new Answer.Chose("buzzes");
      }
      bench.answer(answer);
    }
    return bench;
  }

  @Test
  void isDrawnWhereThereIsRoomAndThinnedWhereThereIsLittle() throws Exception {
    PracticeBench bench = atTheMap();
    assertThat(bench.overview().contact()).isNotNull();
    Canvas whole = ContactPicture.draw(bench.overview(), 100, 40);
    Canvas small = ContactPicture.draw(bench.overview(), 70, 12);
    assertThat(whole).isNotNull();
    assertThat(small).isNotNull();
    assertThat(whole.height()).isEqualTo(23); // two lines of heads, open, 19 frets, the marks
    assertThat(small.height()).isAtMost(12);
    assertThat(ContactPicture.draw(bench.overview(), 20, 40)).isNull();
  }
}
