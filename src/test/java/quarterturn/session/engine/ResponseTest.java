package quarterturn.session.engine;

import static com.google.common.truth.Truth.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quarterturn.procedure.condition.Feel;
import quarterturn.procedure.condition.Response;

/**
 * How a neck answered a turn, at and beside the limits of safety/limits.yaml: 0.05 mm is seen, 0.02
 * mm is the wrong way, of 1/8 turn an answer is expected. The readings are invented.
 */
class ResponseTest {
  private static Play turned(String before, double turn) throws Exception {
    Play play = Play.beginner("bass-34").to("found-low");
    play.read(before).read(before).read(before);
    return play.to("turn-rod").turned(turn, Feel.SMOOTH).to("read-low");
  }

  @ParameterizedTest
  @CsvSource({
    "0.60..0.65, 0.125, 0.55..0.60, MOVED",
    "0.60..0.65, 0.125, 0.56..0.61, NO_ANSWER",
    "0.60..0.65, 0.125, 0.66..0.71, NO_ANSWER",
    "0.60..0.65, 0.125, 0.67..0.72, WRONG_WAY",
    "0.60..0.65, 0.0625, 0.56..0.61, UNSEEN",
    "0.60..0.65, 0.0625, 0.67..0.72, WRONG_WAY",
    "0.10..0.15, -0.125, 0.15..0.20, MOVED",
    "0.10..0.15, -0.125, 0.14..0.19, NO_ANSWER",
    "0.10..0.15, -0.125, 0.03..0.08, WRONG_WAY",
    "0.10..0.15, -0.125, touches, WRONG_WAY",
    "touches, -0.125, 0.05..0.10, MOVED",
    "touches, -0.125, 0.04..0.09, UNSEEN",
    "touches, -0.125, touches, UNSEEN"
  })
  void oneTurn(String before, double turn, String after, Response response) throws Exception {
    assertThat(turned(before, turn).read(after).state().history().response()).isEqualTo(response);
  }

  @ParameterizedTest
  @CsvSource({"0.0625, NO_ANSWER", "-0.0625, UNSEEN"})
  void smallTurnsAddUpInTheirOwnDirectionOnly(double second, Response response) throws Exception {
    Play play = turned("0.60..0.65", 0.0625).read("0.60..0.65");
    play.to("turn-rod").turned(second, Feel.SMOOTH).to("read-low").read("0.60..0.65");
    assertThat(play.state().history().response()).isEqualTo(response);
  }
}
