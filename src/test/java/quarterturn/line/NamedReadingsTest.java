package quarterturn.line;

import static com.google.common.truth.Truth.assertThat;

import org.junit.jupiter.api.Test;
import quarterturn.procedure.condition.Feel;
import quarterturn.session.Answer;
import quarterturn.unit.Bracket;
import quarterturn.unit.Printable;
import quarterturn.unit.Turn;

/** Readings given by their names, before they are asked for. The readings are invented. */
class NamedReadingsTest {
  private static final Answer LOW = new Answer.Measured(new Bracket(0.3, 0.35));

  @Test
  void areKeptUntilTheyAreAskedFor() {
    ScriptedBench bench = new ScriptedBench(Invented.caution(), Invented.relief(), Invented.done());
    Conversation play = Conversation.of(bench, "relief .30..0.35 low", "u");
    assertThat(bench.answers()).containsExactly(new Answer.Confirmed(), LOW).inOrder();
    assertThat(play.says("Kept until it is asked for")).isTrue();
    assertThat(play.says("Asked now: \"Bring all strings to pitch.\"")).isTrue();
  }

  @Test
  void areNotUsedOnceSomethingWasDone() {
    ScriptedBench bench =
        new ScriptedBench(Invented.tell(), Invented.humidity(), Invented.relief(), Invented.done());
    Conversation play =
        Conversation.of(bench, "relief .30..0.35 low; rh 48", "", "relief .35..0.40 low");
    // The air of the room is what it was.
    assertThat(bench.answers())
        .containsExactly(
            new Answer.Confirmed(),
            new Answer.Value(48),
            new Answer.Measured(new Bracket(0.35, 0.4)))
        .inOrder();
    assertThat(play.says("Not used, since something came in between")).isTrue();
  }

  @Test
  void areNotUsedForAnAnswerThatIsTakenBack() {
    ScriptedBench bench = new ScriptedBench(Invented.relief(), Invented.place(), Invented.done());
    Conversation.of(bench, "relief .30..0.35 .35..0.40 low", "back", "touches", "quit");
    assertThat(bench.answers())
        .containsExactly(LOW, new Answer.Correct(), new Answer.Measured(Bracket.touches()))
        .inOrder();
  }

  @Test
  void nothingThatMovesACursorIsSaidBack() {
    ScriptedBench bench = new ScriptedBench(Invented.relief(), Invented.done());
    Conversation play = Conversation.of(bench, "relief \u001b[2J", "touches");
    for (String line : play.printed()) {
      if (!line.startsWith("> ")) {
        assertThat(Printable.of(line)).isEqualTo(line);
      }
    }
  }

  @Test
  void areNotUsedOnceTheRodWasTurned() {
    ScriptedBench bench = new ScriptedBench(Invented.loosen(), Invented.relief(), Invented.done());
    Conversation play =
        Conversation.of(bench, "relief .30..0.35 low", "1/16 smooth", "relief .35..0.40 low");
    assertThat(bench.answers())
        .containsExactly(
            new Answer.Turned(new Turn(-1 / 16.0), Feel.SMOOTH),
            new Answer.Measured(new Bracket(0.35, 0.4)))
        .inOrder();
    assertThat(play.says("Not used, since something came in between")).isTrue();
  }

  @Test
  void aSlipIsShownUnderItsWord() {
    ScriptedBench bench = new ScriptedBench(Invented.relief(), Invented.done());
    Conversation play = Conversation.of(bench, "relief .30 lwo", "relief .30..0.35 low");
    assertThat(bench.answers()).containsExactly(LOW);
    assertThat(play.printed()).contains("           ^");
    assertThat(play.says("\"lwo\" is no reading of relief.")).isTrue();
  }
}
