package quarterturn.script;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quarterturn.procedure.Limits;
import quarterturn.procedure.UnreadableException;
import quarterturn.procedure.read.Shelf;
import quarterturn.unit.TypedLines;

/** Queries and answers of {@code advise --lines}. */
class AdviceLinesTest {
  private static final long SEED = 20_270_313;
  private static final Limits LIMITS = limits();
  private static final String ASKED =
      "{\"window_mm\":[0.25,0.40],\"prior\":\"bass\",\"moves\":[%s]}";

  private static Limits limits() {
    try {
      return new Shelf(null).load("relief").limits();
    } catch (IOException | UnreadableException e) {
      throw new IllegalStateException(e);
    }
  }

  private static JsonNode answer(String line) throws JsonProcessingException {
    return new ObjectMapper()
        .readTree(new AdviceLines(LIMITS).answer(new TypedLines.Line(line, false)));
  }

  @Test
  void aTurnSaysWhatToExpect() throws JsonProcessingException {
    JsonNode answer =
        answer(
            ASKED.formatted(
                "{\"reading_mm\":[0.55,0.60]},{\"turn\":0.125},{\"reading_mm\":[0.45,0.50]}"));
    assertThat(answer.get("action").textValue()).isEqualTo("turn");
    assertThat(answer.get("turns").doubleValue()).isAtLeast(0.125);
    assertThat(answer.get("turns").doubleValue()).isAtMost(0.25);
    assertThat(answer.get("expected_mm").get(0).doubleValue()).isAtLeast(0.2);
    assertThat(answer.get("expected_mm").get(1).doubleValue()).isAtMost(0.47);
    assertThat(answer.get("p_in_window").doubleValue()).isAtLeast(0.6);
    assertThat(answer.get("why").textValue()).contains("Tightening makes it smaller.");
    assertThat(answer.get("known").get("mm_per_quarter").doubleValue()).isWithin(0.05).of(0.2);
  }

  @Test
  void theFirstTurnOfAnUnknownNeckIsAnEighthAtMost() throws JsonProcessingException {
    JsonNode first = answer(ASKED.formatted("{\"reading_mm\":[1.0,null]}"));
    assertThat(first.get("turns").doubleValue()).isEqualTo(0.125);
    JsonNode touching = answer(ASKED.formatted("{\"reading_mm\":[null,0.05]}"));
    assertThat(touching.get("turns").doubleValue()).isEqualTo(-0.125);
    assertThat(touching.get("expected_mm").get(0).isNull()).isTrue();
  }

  @Test
  void aKnownNeckNeedsNoProbe() throws JsonProcessingException {
    JsonNode known =
        answer(
                ASKED.formatted(
                    "{\"reading_mm\":[0.85,0.90]},{\"turn\":0.125},{\"reading_mm\":[0.75,0.80]},"
                        + "{\"turn\":0.25},{\"reading_mm\":[0.55,0.60]}"))
            .get("known");
    assertThat(known.get("answered").booleanValue()).isTrue();
    JsonNode next =
        answer(
            "{\"window_mm\":[0.25,0.40],\"prior\":\"bass\",\"moves\":[{\"reading_mm\":[0.55,0.60]}],"
                + "\"known\":"
                + known
                + "}");
    assertThat(next.get("action").textValue()).isEqualTo("turn");
    assertThat(next.get("turns").doubleValue()).isGreaterThan(0.125);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          {"reading_mm":[0.30,0.35]} | done | The gap is
          {"reading_mm":[0.35,0.45]} | measure-again | once more
          {"reading_mm":[0.60,0.65]},{"turn":0.125} | measure-again | no reading
          {"reading_mm":[0.60,0.65]},{"turn":0.125},{"reading_mm":[0.60,0.65]},{"turn":0.25},{"reading_mm":[0.60,0.65]},{"turn":0.25},{"reading_mm":[0.60,0.65]} | hand-over | no-response
          {"reading_mm":[0.60,0.65]},{"turn":0.125},{"reading_mm":[0.75,0.80]},{"turn":0.25},{"reading_mm":[0.95,1.00]} | hand-over | wrong-way
          """)
  void everyActionHasItsWord(String moves, String action, String why)
      throws JsonProcessingException {
    JsonNode answer = answer(ASKED.formatted(moves));
    assertThat(answer.get("action").textValue()).isEqualTo(action);
    assertThat(answer.get("why").textValue()).contains(why);
    assertThat(answer.has("known")).isTrue();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          rubbish | not JSON
          [] | not a JSON object
          {"window_mm":[0.25,0.40],"prior":"banjo","moves":[]} | prior: "bass" or "guitar"
          {"window_mm":[0.40,0.25],"prior":"bass","moves":[]} | window_mm
          {"window_mm":[0.25,1e9],"prior":"bass","moves":[]} | at most 10
          {"window_mm":[0.25,0.40],"prior":"bass"} | moves
          {"window_mm":[0.25,0.40],"prior":"bass","moves":[],"extra":1} | no key "extra"
          {"window_mm":[0.25,0.40],"prior":"bass","moves":[{"turn":0.125}]} | a reading before it
          {"window_mm":[0.25,0.40],"prior":"bass","moves":[{"reading_mm":[0.3,0.4]},{"turn":9}]} | at most one
          {"window_mm":[0.25,0.40],"prior":"bass","moves":[{"reading_mm":[0.5,0.4]}]} | thinner
          {"window_mm":[0.25,0.40],"prior":"bass","moves":[{"reading_mm":[null,null]}]} | reading_mm
          {"window_mm":[0.25,0.40],"prior":"bass","moves":[{"reading_mm":[0,1e6]}]} | at most 10
          {"window_mm":[0.25,0.40],"prior":"bass","moves":[],"known":{}} | as an earlier answer gave it
          {"window_mm":[0.25,0.40],"prior":"bass","moves":[],"known":{"mm_per_quarter":0.2,"sigma":9,"slack":[1,0,0],"way":0,"answered":true}} | known
          """)
  void aBadLineIsAnsweredWithWhatIsWrong(String line, String error) throws JsonProcessingException {
    assertThat(answer(line).get("error").textValue()).contains(error);
  }

  @Test
  void aLineCutShortIsRefused() throws JsonProcessingException {
    JsonNode answer =
        new ObjectMapper().readTree(new AdviceLines(LIMITS).answer(new TypedLines.Line("{", true)));
    assertThat(answer.get("error").textValue()).contains("characters long");
  }

  @Test
  void anAnswerHangsOnItsQueryAloneAndAnswersAreBounded() throws JsonProcessingException {
    SplittableRandom random = new SplittableRandom(SEED);
    AdviceLines one = new AdviceLines(LIMITS);
    for (int i = 0; i < 60; i++) {
      StringBuilder moves = new StringBuilder();
      for (int m = 0; m <= random.nextInt(6); m++) {
        double low = random.nextInt(30) / 20.0;
        moves.append(m == 0 ? "" : ",{\"turn\":%s},".formatted((random.nextInt(9) - 4) / 16.0));
        moves.append("{\"reading_mm\":[%s,%s]}".formatted(low, low + 0.05));
      }
      String line = ASKED.formatted(moves);
      String answer = one.answer(new TypedLines.Line(line, false));
      assertWithMessage(line)
          .that(answer)
          .isEqualTo(new AdviceLines(LIMITS).answer(new TypedLines.Line(line, false)));
      JsonNode read = new ObjectMapper().readTree(answer);
      assertWithMessage(line).that(read.has("error")).isFalse();
      if (read.has("turns")) {
        assertThat(Math.abs(read.get("turns").doubleValue())).isAtMost(0.25);
      }
      assertThat(read.get("p_in_window").doubleValue()).isAtLeast(0);
      assertThat(read.get("p_in_window").doubleValue()).isAtMost(1);
    }
  }
}
