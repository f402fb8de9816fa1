package quarterturn.unit;

import static com.google.common.truth.Truth.assertThat;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class TurnTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "1/8|0.125",
        "1/8 turn|0.125",
        "1 / 8|0.125",
        "0.125|0.125",
        "0,125|0.125",
        ".125|0.125",
        "45 deg|0.125",
        "45 degrees|0.125",
        "45°|0.125",
        "-1/8|-0.125",
        "+1/8|0.125",
        "-45 DEG|-0.125",
        "1|1",
        "1 turn|1",
        "2 turns|2",
        "1 1/4 turns|1.25",
        "-1 1/4|-1.25",
        "0|0",
        "3/16|0.1875",
      })
  void everySpellingIsRead(String typed, double turns) {
    assertThat(Turn.parse(typed).turns()).isWithin(1e-12).of(turns);
  }

  @ParameterizedTest
  @CsvSource({
    "0.125, from 12 to half past one",
    "-0.125, from 12 to half past ten",
    "0.25, from 12 to three",
    "-0.25, from 12 to nine",
    "0.0625, from 12 to a quarter to one",
    "-0.0625, from 12 to a quarter past eleven",
    "0.5, from 12 to six",
    "0.1, ''"
  })
  void aTurnIsSaidByTheClockToo(double turns, String words) {
    assertThat(new Turn(turns).clock()).isEqualTo(words);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        ".",
        "turn",
        "1/0",
        "1/",
        "/8",
        "a bit",
        "1/8/2",
        "0.1.2",
        "1e-1",
        "NaN",
        "11/4 1/4",
        "1/8 mm",
        "45 rad",
        "12345",
        "\u0007"
      })
  void whatIsNoTurnIsRefusedWithAnExample(String typed) {
    NotUnderstoodException e = assertThrows(NotUnderstoodException.class, () -> Turn.parse(typed));
    assertThat(e).hasMessageThat().contains("type for example 1/8, 0.125 or 45 deg");
    assertThat(e).hasMessageThat().doesNotContainMatch("\\p{Cntrl}");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "0|no turn",
        "0.03125|1/32 turn",
        "0.0625|1/16 turn",
        "-0.125|1/8 turn",
        "0.1875|3/16 turn",
        "0.25|1/4 turn",
        "0.5|1/2 turn",
        "1|1 turn",
        "-1|1 turn",
        "1.25|1 1/4 turns",
        "2|2 turns",
        "0.1|0.1 turn",
        "1.3|1.3 turns",
        "0.99997|1 turn",
        "0.00001|no turn",
        "0.00004|no turn",
        "0.374989|3/8 turn",
        "0.37494|0.3749 turn",
        "1.00004|1 turn",
        "-1.00006|1.0001 turns",
      })
  void itIsPrintedAsAFractionWhereItIsOne(double turns, String text) {
    assertThat(new Turn(turns).toString()).isEqualTo(text);
  }

  @Test
  void whatIsPrintedIsReadBackWithoutItsDirection() {
    Random random = new Random(8);
    for (int i = 1; i < 2000; i++) {
      boolean fraction = random.nextBoolean();
      double turns =
          fraction ? (1 + random.nextInt(320)) / 32.0 : (1 + random.nextInt(99_999)) / 1e4;
      Turn turn = new Turn(random.nextBoolean() ? turns : -turns);
      assertThat(Turn.parse(turn.toString()).turns()).isWithin(1e-9).of(turns);
    }
  }

  @Test
  void aSignedTurnIsReadBackWithItsDirection() {
    Random random = new Random(18);
    for (int i = 0; i < 500; i++) {
      Turn turn = new Turn((random.nextInt(65) - 32) / 32.0);
      assertThat(Turn.parse(turn.turns() == 0 ? "0" : turn.signed())).isEqualTo(turn);
    }
    assertThat(Turn.parse("-1/8").signed()).isEqualTo("-1/8 turn");
    assertThat(Turn.parse("-90 deg").signed()).isEqualTo("-1/4 turn");
    assertThat(new Turn(-1e-9).signed()).isEqualTo("no turn");
  }

  @Test
  void turnsAddUpAndTurnBack() {
    assertThat(Turn.EIGHTH.plus(Turn.EIGHTH)).isEqualTo(Turn.QUARTER);
    assertThat(Turn.QUARTER.plus(Turn.QUARTER.opposite())).isEqualTo(Turn.NONE);
    assertThat(Turn.NONE.opposite()).isEqualTo(Turn.NONE);
    assertThat(Turn.EIGHTH.opposite().size()).isEqualTo(Turn.EIGHTH);
    assertThat(Turn.EIGHTH.degrees()).isEqualTo(45.0);
    assertThat(Turn.SIXTEENTH).isLessThan(Turn.EIGHTH);
    assertThat(Turn.EIGHTH.opposite()).isLessThan(Turn.NONE);
  }

  @Test
  void atLeastForgivesAThousandthAndNoMore() {
    assertThat(new Turn(0.4995).atLeast(new Turn(0.5))).isTrue();
    assertThat(new Turn(0.498).atLeast(new Turn(0.5))).isFalse();
    assertThat(new Turn(0.1 + 0.2).atLeast(new Turn(0.3))).isTrue();
    assertThat(new Turn(-0.001).atLeast(Turn.NONE)).isTrue();
  }

  @Test
  void aTurnIsFinite() {
    assertThrows(IllegalArgumentException.class, () -> new Turn(Double.NaN));
    assertThrows(IllegalArgumentException.class, () -> new Turn(Double.NEGATIVE_INFINITY));
  }
}
