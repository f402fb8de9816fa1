package quarterturn.line;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;

import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.time.ZoneOffset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import quarterturn.procedure.condition.Feel;
import quarterturn.rehearsal.PracticeBench;
import quarterturn.rehearsal.simulated.NamedNeck;
import quarterturn.rehearsal.simulated.Practising;
import quarterturn.session.Answer;
import quarterturn.session.ExitStatus;
import quarterturn.session.Player;
import quarterturn.session.Prompt;
import quarterturn.unit.Dates;

class AutoSourceTest {
  @ParameterizedTest
  @EnumSource(NamedNeck.class)
  void whatIsTypedMeansWhatWasMeant(NamedNeck neck) throws Exception {
    PracticeBench bench = Practising.on(neck);
    for (int i = 0; i < 500 && !bench.prompt().ended(); i++) {
      Prompt prompt = bench.prompt();
      String typed = AutoSource.typed(prompt, bench.truth());
      Reply reply = TypedReplyReader.read(typed, prompt, bench.now());
      assertWithMessage(prompt + " " + typed).that(reply).isInstanceOf(Reply.Give.class);
      assertThat(((Reply.Give) reply).answer()).isEqualTo(bench.truth());
      bench.answer(bench.truth());
    }
    assertThat(bench.prompt().ended()).isTrue();
  }

  @Test
  void aTurnTheOtherWayIsTypedSo() throws Exception {
    PracticeBench bench = Practising.on(NamedNeck.TOO_MUCH);
    while (!(bench.prompt() instanceof Prompt.TurnRod)) {
      bench.answer(bench.truth());
    }
    Prompt.TurnRod turn = (Prompt.TurnRod) bench.prompt();
    Answer other = new Answer.Turned(turn.turn().opposite(), Feel.STIFF);
    String typed = AutoSource.typed(turn, other);
    Reply reply = TypedReplyReader.read(typed, turn, bench.now());
    assertThat(((Reply.Give) reply).answer()).isEqualTo(other);
  }

  @Test
  void aWholeRehearsalIsPrintedWithItsAnswers() throws Exception {
    PracticeBench bench = Practising.on(NamedNeck.TOO_MUCH);
    StringWriter text = new StringWriter();
    PrintWriter out = new PrintWriter(text);
    Player player = new Player(bench, bench::truth, 100_000);
    LineSource place = new PipeSource(new StringReader(""), out, false);
    int status =
        LineFace.run(bench, new AutoSource(place, out, player), out, new Dates(ZoneOffset.UTC));
    assertThat(status).isEqualTo(ExitStatus.DONE);
    assertThat(text.toString()).contains("> understood");
    assertThat(text.toString()).contains("> 0.70 passes, 0.75 lifts");
    assertThat(text.toString()).contains("The neck as it really was: sound");
  }
}
