package quarterturn.unit;

import static com.google.common.truth.Truth.assertThat;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DecimalsTest {
  @ParameterizedTest
  @CsvSource({
    "1,0",
    "10,0",
    "100,0",
    "0.5,1",
    "0.1,1",
    "0.25,2",
    "0.05,2",
    "0.01,2",
    "0.001,3",
    "0.0254,4",
    "0.396875,4",
    "0.00001,4",
    "1.5,1"
  })
  void aStepNeedsSoManyDecimals(double step, int decimals) {
    assertThat(Decimals.of(step)).isEqualTo(decimals);
  }

  @Test
  void aStepIsAboveZero() {
    for (double bad : new double[] {0, -0.05, Double.NaN, Double.POSITIVE_INFINITY}) {
      IllegalArgumentException e =
          assertThrows(IllegalArgumentException.class, () -> Decimals.of(bad));
      assertThat(e).hasMessageThat().contains("must be above zero");
    }
  }

  @ParameterizedTest
  @CsvSource({
    "0.3,2,0.30",
    "0.305,2,0.31",
    "0.304,2,0.30",
    "1.005,2,1.01",
    "-0.305,2,-0.31",
    "-0.001,2,0.00",
    "-0.0,0,0",
    "12.5,0,13",
    "1234567,0,1234567",
    "1e7,1,10000000.0"
  })
  void aNumberIsPrintedToItsDecimals(double value, int decimals, String text) {
    assertThat(Decimals.print(value, decimals)).isEqualTo(text);
  }

  @ParameterizedTest
  @CsvSource({
    "0,0",
    "-0.0,0",
    "0.3,0.3",
    "0.30000000000000004,0.3",
    "0.3048,0.3048",
    "0.00004,0",
    "100,100",
    "-0.00001,0",
    "-2.50,-2.5",
    "1e7,10000000",
    "0.12345,0.1235"
  })
  void aPlainNumberHasNoIdleDigits(double value, String text) {
    assertThat(Decimals.plain(value)).isEqualTo(text);
  }

  @Test
  void whatIsPrintedIsNeverFurtherThanHalfADigit() {
    Random random = new Random(4);
    for (int i = 0; i < 2000; i++) {
      double value = (random.nextDouble() - 0.5) * 2000;
      int decimals = random.nextInt(5);
      double half = 0.5 * Math.pow(10, -decimals) + 1e-9;
      assertThat(Double.parseDouble(Decimals.print(value, decimals))).isWithin(half).of(value);
      assertThat(Double.parseDouble(Decimals.plain(value))).isWithin(0.5e-4 + 1e-9).of(value);
    }
  }
}
