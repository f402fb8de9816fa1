package quarterturn.script;

import static com.google.common.truth.Truth.assertThat;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import quarterturn.line.Invented;
import quarterturn.line.ScriptedBench;
import quarterturn.procedure.Picture;
import quarterturn.session.Prompt;
import quarterturn.session.PromptText;
import quarterturn.unit.Turn;

class ScriptPromptTest {
  private static final String PLACE = ",\"place\":\"Neck relief, part 1 of 4: Before you start\"}";

  /** A prompt's line without its place, which each has at its end. */
  private static String shown(Prompt prompt) {
    String line = ScriptPlay.of(new ScriptedBench(prompt), new byte[0]).printed().get(0);
    assertThat(line).endsWith(PLACE);
    return line.replace(PLACE, "}");
  }

  @Test
  void tellCarriesItsReason() {
    assertThat(shown(Invented.tell()))
        .isEqualTo(
            "{\"prompt\":\"tell\",\"step\":\"support-neck\",\"text\":\"Lay the instrument on its"
                + " side.\",\"hazards\":[],\"why\":\"The neck must hang free.\"}");
  }

  @Test
  void hazardCarriesWordHarmAndAvoidance() {
    assertThat(shown(Invented.caution()))
        .isEqualTo(
            "{\"prompt\":\"hazard\",\"step\":\"retune\",\"text\":\"Bring all strings to"
                + " pitch.\",\"hazards\":[\"string-whip\"],\"page\":[{\"word\":\"WARNING\",\"harm\":\"A string"
                + " can break under tension and whip; it can hurt an eye.\",\"avoid\":\"Wear eye"
                + " protection and keep your face out of the string's line.\"}]}");
  }

  @Test
  void chooseGivesTheOrdinaryAnswerFirst() {
    assertThat(shown(Invented.place()))
        .endsWith(
            "\"hazards\":[],\"options\":[\"headstock\",\"sound-hole\",\"again\"],\"labels\":[\"At"
                + " the headstock\",\"In the sound hole\",\"I have to look again\"]}");
  }

  @Test
  void measureCarriesItsConvention() {
    assertThat(shown(Invented.relief()))
        .endsWith(
            "\"quantity\":\"relief\",\"unit\":\"mm\",\"held\":[1,17],\"read_at\":8,"
                + "\"string\":\"E\",\"which\":\"lowest\"}");
    assertThat(shown(Invented.humidity()))
        .endsWith("\"quantity\":\"humidity\",\"unit\":\"%\",\"held\":[],\"read_at\":0}");
  }

  @Test
  void turnIsSignedAndSaysWhatToExpect() {
    assertThat(shown(Invented.loosen()))
        .endsWith(
            "\"what\":\"rod\",\"turns\":-0.125,\"direction\":\"loosen\",\"limit\":0.25,"
                + "\"expected_mm\":[0.62,0.71],\"can_undo\":false}");
  }

  @Test
  void expectedIsOpenWhereTheStringMayStillTouchAndAbsentWhereNothingIsKnown() {
    assertThat(shown(Invented.tighten())).contains("\"expected_mm\":[null,0.71],\"can_undo\":true");
    Prompt unknown =
        new Prompt.TurnRod(
            Invented.said("turn", "Turn."), Turn.EIGHTH, Turn.QUARTER, null, false, Set.of());
    assertThat(shown(unknown)).doesNotContain("expected_mm");
  }

  @Test
  void waitSaysHowLongAndUntilWhen() {
    assertThat(shown(Invented.settle()))
        .endsWith(
            "\"minutes\":10,\"until\":\"2027-03-01T10:10:00Z\","
                + "\"meanwhile\":\"You may play another instrument.\",\"rest\":false}");
    assertThat(shown(Invented.rest())).contains("\"minutes\":1440,");
  }

  @Test
  void endsSayWhyAndSetTheStatus() {
    ScriptPlay done = ScriptPlay.of(new ScriptedBench(Invented.done()), "{\"answer\":true}");
    assertThat(done.status()).isEqualTo(0);
    assertThat(done.printed())
        .containsExactly(
            "{\"prompt\":\"done\",\"step\":\"end\",\"text\":\"The relief stands in the"
                + " window.\",\"hazards\":[],\"why\":\"The relief stands in the"
                + " window.\",\"outcome\":\"in window\""
                + PLACE);
    ScriptPlay over = ScriptPlay.of(new ScriptedBench(Invented.handOver()));
    assertThat(over.status()).isEqualTo(1);
    assertThat(over.printed().get(0)).startsWith("{\"prompt\":\"hand-over\"");
  }

  @Test
  void notesAndEarlierHazardsAreListed() {
    PromptText said =
        new PromptText(
            "demo",
            "s",
            "The key",
            "Ü first\nsecond\u001b[2J",
            null,
            List.of(Invented.WHIP),
            Picture.KEY,
            List.of("The neck moved."));
    assertThat(shown(new Prompt.Tell(said)))
        .isEqualTo(
            "{\"prompt\":\"tell\",\"step\":\"s\",\"text\":\"Ü first\\nsecond\uFFFD[2J\","
                + "\"hazards\":[\"string-whip\"],\"notes\":[\"The neck moved.\"]}");
  }
}
