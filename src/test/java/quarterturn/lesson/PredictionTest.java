package quarterturn.lesson;

import static com.google.common.truth.Truth.assertThat;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quarterturn.unit.Bracket;
import quarterturn.unit.Turn;

class PredictionTest {
  @ParameterizedTest
  @CsvSource({
    "LESS,0.32,0.50,0.30,RIGHT", "MORE,0.32,0.50,0.30,WRONG", "SAME,0.32,0.50,0.30,WRONG",
    "LESS,0.25,0.50,0.30,RIGHT", "LESS,0.24,0.50,0.30,WRONG", "LESS,0.41,0.50,0.30,WRONG",
    "SAME,0.30,0.30,0.30,RIGHT", "LESS,0.30,0.30,0.30,WRONG", "SAME,0.30,0.32,0.30,RIGHT",
    "LESS,0.30,0.32,0.30,RIGHT", "MORE,0.30,0.32,0.30,WRONG", "MORE,0.30,,0.30,RIGHT",
  })
  void aReadingProvesDirectionAndSize(
      Direction way, double size, Double before, double after, Levels.Try how) {
    Value was = before == null ? null : Demo.gap(before);
    assertThat(Demo.guess(way, size).against(was, Demo.gap(after), 0.05)).isEqualTo(how);
  }

  @ParameterizedTest
  @CsvSource({
    "MORE,0.125,0.125,RIGHT", "MORE,0.1875,0.125,RIGHT", "MORE,0.25,0.125,WRONG",
    "LESS,0.125,0.125,WRONG", "LESS,0.125,-0.125,RIGHT", "SAME,0,0,RIGHT",
  })
  void aTurnProvesItsWayAndAmount(Direction way, double size, double turned, Levels.Try how) {
    Value rod = new Value.Rod(new Turn(turned));
    assertThat(Demo.guess(way, size).against(Demo.GAP, rod, 0.0625)).isEqualTo(how);
  }

  @Test
  void helpIsNoErrorAndWhatWasNotReadIsNeither() {
    Prediction helped = new Prediction(Direction.LESS, 0.3, "so", true);
    assertThat(helped.against(null, Demo.GAP, 0.05)).isEqualTo(Levels.Try.RIGHT_WITH_HELP);
    assertThat(helped.against(null, Value.NONE, 0.05)).isEqualTo(Levels.Try.UNTOLD);
    Value touches = new Value.Gap(Bracket.touches());
    assertThat(Demo.guess(Direction.LESS, 0).against(Demo.GAP, touches, 0.05))
        .isEqualTo(Levels.Try.RIGHT);
  }

  @Test
  void aPredictionNeedsAReason() {
    assertThrows(
        IllegalArgumentException.class, () -> new Prediction(Direction.LESS, 0.3, " ", false));
  }
}
