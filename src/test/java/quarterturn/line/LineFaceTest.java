package quarterturn.line;

import static com.google.common.truth.Truth.assertThat;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import quarterturn.procedure.condition.Feel;
import quarterturn.session.Answer;
import quarterturn.session.Prompt;
import quarterturn.unit.Bracket;
import quarterturn.unit.Turn;

/** The answers that typed lines turn into; what is printed is in the conversations. */
class LineFaceTest {
  private static List<Answer> answers(Prompt prompt, String... typed) {
    ScriptedBench bench = new ScriptedBench(prompt, prompt, Invented.done());
    Conversation play = Conversation.of(bench, typed);
    assertThat(play.status()).isEqualTo(0);
    return bench.answers();
  }

  @Test
  void enterNeverAcceptsAHazard() {
    ScriptedBench bench = new ScriptedBench(Invented.caution(), Invented.done());
    Conversation.of(bench, "", " ", "\t", "y", "ok", "done", "1", "understood!");
    assertThat(bench.accepted()).isEmpty();
    Conversation.of(bench, " U ");
    assertThat(bench.accepted()).containsExactly("string-whip");
  }

  @Test
  void enterNeverCarriesATurnThrough() {
    assertThat(answers(Invented.loosen(), "", "", "", "")).isEmpty();
  }

  @Test
  void turnsKeepTheirDirection() {
    assertThat(answers(Invented.loosen(), "1/16 1", "other way 1/8 stiff"))
        .containsExactly(
            new Answer.Turned(new Turn(-1 / 16.0), Feel.SMOOTH),
            new Answer.Turned(new Turn(1 / 8.0), Feel.STIFF))
        .inOrder();
    assertThat(answers(Invented.tighten(), "1/4 sm", "loosened 1/4 noise"))
        .containsExactly(
            new Answer.Turned(new Turn(1 / 4.0), Feel.SMOOTH),
            new Answer.Turned(new Turn(-1 / 4.0), Feel.NOISE))
        .inOrder();
    assertThat(answers(Invented.tighten(), "undo")).containsExactly(new Answer.Undo());
    assertThat(answers(Invented.loosen(), "0 jammed"))
        .containsExactly(new Answer.Turned(Turn.NONE, Feel.JAMMED));
  }

  @Test
  void anAmountAloneIsNoAnswerAndAFeelAloneOnlyWhereItIsOneToStopAt() {
    for (Feel feel : Feel.values()) {
      boolean stops = Set.of(Feel.JAMMED, Feel.NOISE, Feel.SLIPPED).contains(feel);
      List<Answer> given = answers(Invented.loosen(), feel.word());
      assertThat(given).hasSize(stops ? 1 : 0);
      given.forEach(answer -> assertThat(((Answer.Felt) answer).feel()).isEqualTo(feel));
    }
    assertThat(answers(Invented.loosen(), "1/8", "0", "other way 1/8", "1", "3")).isEmpty();
  }

  @Test
  void oneLineHoldsSeveralReadings() {
    assertThat(answers(Invented.relief(), "0.30..0.35 ; touches"))
        .containsExactly(
            new Answer.Measured(new Bracket(0.3, 0.35)), new Answer.Measured(Bracket.touches()))
        .inOrder();
  }

  @Test
  void aLineIsTakenUpToWhatDoesNotFit() {
    assertThat(answers(Invented.relief(), "0.30..0.35 ; rubbish")).hasSize(1);
  }

  @Test
  void aWaitIsOnlySatOutWhenTold() {
    ScriptedBench bench = new ScriptedBench(Invented.settle(), Invented.done());
    Conversation.of(bench, "", "", "");
    assertThat(bench.now()).isEqualTo(Invented.BEGAN);
    Conversation play = Conversation.of(bench, "wait");
    assertThat(play.says("Time left: 1 minute.")).isTrue();
    assertThat(bench.now()).isEqualTo(Invented.settle().until());
    assertThat(bench.answers()).containsExactly(new Answer.Waited(null));
  }

  @Test
  void aReasonLosesItsControlCharacters() {
    assertThat(answers(Invented.rest(), "lift \u001b[31mred"))
        .containsExactly(new Answer.Waited("\uFFFD[31mred"));
  }

  @Test
  void controlCharactersAreSaidBackVisibly() {
    ScriptedBench bench = new ScriptedBench(Invented.place(), Invented.done());
    Conversation play = Conversation.of(bench, "\u001b]0;x\u0007\u009b\u202e");
    assertThat(String.join("\n", play.printed())).contains("\"\uFFFD]0;x\uFFFD\uFFFD\uFFFD\" is");
    assertThat(String.join("", play.printed())).doesNotContain("\u001b");
  }

  @Test
  void veryLongLinesAreAnsweredShortlyAndQuickly() {
    String digits = "1".repeat(100_000) + "x";
    ScriptedBench bench = new ScriptedBench(Invented.relief(), Invented.done());
    Conversation play = Conversation.of(bench, digits);
    assertThat(play.says("\"11111111111111111111...\" is not a reading")).isTrue();
  }

  @Test
  void aFullDiskIsSaidAndStopsTheSession() {
    ScriptedBench bench = new ScriptedBench(Invented.tell(), Invented.done());
    bench.breakDisk();
    Conversation play = Conversation.of(bench, "");
    assertThat(play.status()).isEqualTo(2);
    assertThat(play.says("Stopped: the record could not be read or written (the disk")).isTrue();
  }
}
