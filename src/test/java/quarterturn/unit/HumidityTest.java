package quarterturn.unit;

import static com.google.common.truth.Truth.assertThat;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class HumidityTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "48|48",
        "48 %|48",
        "48%|48",
        "48 rh|48",
        "48 % RH|48",
        "48%RH|48",
        "48,5 %|48.5",
        "48.|48",
        "0|0",
        "100 %|100",
        "007|7"
      })
  void everySpellingIsRead(String typed, double percent) {
    assertThat(Humidity.parse(typed).percent()).isWithin(1e-12).of(percent);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"", "%", "rh", "dry", "-5", "4 8", "1e2", "NaN", "48 %%", "48 C", "\u0007"})
  void whatIsNoHumidityIsRefusedWithAnExample(String typed) {
    NotUnderstoodException e =
        assertThrows(NotUnderstoodException.class, () -> Humidity.parse(typed));
    assertThat(e).hasMessageThat().contains("type for example 48 or 48 %");
    assertThat(e).hasMessageThat().doesNotContainMatch("\\p{Cntrl}");
  }

  @Test
  void itLiesBetweenNothingAndAHundred() {
    for (double bad : new double[] {-0.1, 100.1, Double.NaN, Double.POSITIVE_INFINITY}) {
      NotUnderstoodException e =
          assertThrows(NotUnderstoodException.class, () -> new Humidity(bad));
      assertThat(e).hasMessageThat().contains("between 0 and 100 %");
    }
    assertThrows(NotUnderstoodException.class, () -> Humidity.parse("101 %"));
  }

  /** Common practice, no source: a room hygrometer shows whole percents and is less sure still. */
  @Test
  void itIsPrintedToTheWholePercentAndReadBack() {
    assertThat(new Humidity(48.4).toString()).isEqualTo("48 %");
    assertThat(new Humidity(48.5).toString()).isEqualTo("49 %");
    for (int percent = 0; percent <= 100; percent++) {
      Humidity humidity = new Humidity(percent);
      assertThat(Humidity.parse(humidity.toString())).isEqualTo(humidity);
    }
  }
}
