package quarterturn.lesson.teacher;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import quarterturn.lesson.Demo;
import quarterturn.lesson.Value;
import quarterturn.unit.Bracket;
import quarterturn.unit.NotUnderstoodException;
import quarterturn.unit.Turn;

class ReadBackTest {
  private static final Value GAP = Demo.gap(0.30);
  private static final Value TURN = new Value.Rod(Turn.EIGHTH);
  private static final Value NUMBER = new Value.Number(-12.5, "cents");

  @ParameterizedTest
  @ValueSource(
      strings = {"0.30 to 0.35", "0.30 passes 0.35 lifts", ".30 .. .35", "0,30 to 0,35", "0.325"})
  void aGapThatAgrees(String typed) {
    assertThat(ReadBack.of(typed, GAP).agrees(GAP)).isTrue();
  }

  @ParameterizedTest
  @ValueSource(strings = {"0.35 to 0.40", "0.30 to 0.40", "0.30", "touches", "0.30 passes"})
  void aGapThatDiffers(String typed) {
    assertThat(ReadBack.of(typed, GAP).agrees(GAP)).isFalse();
  }

  @Test
  void anOpenReadingIsReadBackAsItIsShown() {
    for (Bracket open : List.of(Bracket.touches(), Bracket.passes(0.4), Bracket.lifts(0.2))) {
      Value kept = new Value.Gap(open);
      assertWithMessage(kept.toString())
          .that(ReadBack.of(kept.toString(), kept).agrees(kept))
          .isTrue();
    }
  }

  @ParameterizedTest
  @CsvSource({
    "tighten 1/8, true",
    "Tightened 1/8 turn, true",
    "tighten 45 deg, true",
    "tighten 0.125, true",
    "loosen 1/8, false",
    "tighten 1/4, false",
    "no turn, false"
  })
  void aTurnHasItsWay(String typed, boolean agrees) {
    assertThat(ReadBack.of(typed, TURN).agrees(TURN)).isEqualTo(agrees);
  }

  @ParameterizedTest
  @CsvSource({"-12.5, true", "'-12,5 cents', true", "12.5, false", "-12.5 mm, false"})
  void aNumberHasItsUnit(String typed, boolean agrees) {
    assertThat(ReadBack.of(typed, NUMBER).agrees(NUMBER)).isEqualTo(agrees);
  }

  @ParameterizedTest
  @ValueSource(strings = {"ok", "OK", "yes", "done", "", "  ", "1/8", "left a bit"})
  void aNodIsNoTurn(String typed) {
    NotUnderstoodException e =
        assertThrows(NotUnderstoodException.class, () -> ReadBack.of(typed, TURN));
    assertThat(e).hasMessageThat().contains("loosen 3/16");
  }

  @Test
  void whereNothingIsReadBackNothingIsTyped() {
    assertThat(ReadBack.of(" ", Value.NONE)).isEqualTo(Value.NONE);
    assertThrows(NotUnderstoodException.class, () -> ReadBack.of("0.30", Value.NONE));
    assertThrows(NotUnderstoodException.class, () -> ReadBack.of("ok", GAP));
    assertThrows(NotUnderstoodException.class, () -> ReadBack.of("twelve", NUMBER));
  }

  /** An example that was the value would let the desk tell what only the bench may. */
  @Test
  void noExampleIsTheValue() {
    Value loosen = new Value.Rod(new Turn(-3 / 16.0));
    Value twelve = new Value.Number(12, "cents");
    for (Value kept : List.of(TURN, loosen, NUMBER, twelve, GAP, Demo.gap(0.10))) {
      String example = ReadBack.example(kept).split(",", -1)[0];
      assertWithMessage(example).that(ReadBack.of(example, kept).agrees(kept)).isFalse();
    }
  }
}
