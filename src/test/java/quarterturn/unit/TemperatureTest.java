package quarterturn.unit;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class TemperatureTest {
  /** Exact by definition (NIST SP 811, appendix B): t/C = (t/F - 32) / 1.8. */
  @ParameterizedTest
  @CsvSource({"32, 0", "212, 100", "-40, -40", "68, 20", "70, 21.111111111111111"})
  void fahrenheitIsExact(double fahrenheit, double celsius) {
    assertThat(Temperature.fahrenheit(fahrenheit).celsius()).isWithin(1e-12).of(celsius);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "21|21",
        "21 C|21",
        "21c|21",
        "21°|21",
        "21 °C|21",
        "21 ° C|21",
        "-2,5 °C|-2.5",
        "70 F|21.11111111111",
        "70°F|21.11111111111",
        "-40 f|-40",
      })
  void everySpellingIsRead(String typed, double celsius) {
    assertThat(Temperature.parse(typed).celsius()).isWithin(1e-9).of(celsius);
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "C", "warm", "21 K", "21 CF", "1e2", "21 C 4", "\u001b[2J"})
  void whatIsNoTemperatureIsRefusedWithExamples(String typed) {
    NotUnderstoodException e =
        assertThrows(NotUnderstoodException.class, () -> Temperature.parse(typed));
    assertThat(e)
        .hasMessageThat()
        .endsWith("\" is not a temperature; type for example 21, 21 C or 70 F");
    assertThat(e).hasMessageThat().doesNotContainMatch("\\p{Cntrl}");
  }

  @ParameterizedTest
  @ValueSource(strings = {"-273.15", "-273.16 C", "-460 F"})
  void itIsAboveAbsoluteZero(String typed) {
    NotUnderstoodException e =
        assertThrows(NotUnderstoodException.class, () -> Temperature.parse(typed));
    assertThat(e)
        .hasMessageThat()
        .isEqualTo("a temperature must be above absolute zero, -273.15 C");
  }

  @Test
  void itIsANumber() {
    assertThat(Temperature.parse("-273.149").celsius()).isEqualTo(-273.149);
    assertThrows(NotUnderstoodException.class, () -> new Temperature(Double.NaN));
    assertThrows(NotUnderstoodException.class, () -> new Temperature(Double.POSITIVE_INFINITY));
  }

  @Test
  void whatIsPrintedIsReadBack() {
    long seed = 273;
    Random random = new Random(seed);
    for (int i = 0; i < 2000; i++) {
      Temperature warm = new Temperature(Math.rint(random.nextDouble() * 3e6 - 2.7e6) / 1e4);
      assertWithMessage("seed %s, round %s", seed, i)
          .that(Temperature.parse(warm.toString()).celsius())
          .isWithin(1e-9)
          .of(warm.celsius());
    }
  }

  @Test
  void temperaturesArePrinted() {
    assertThat(Temperature.fahrenheit(70).toString()).isEqualTo("21.1111 C");
    assertThat(new Temperature(-2.5).toString()).isEqualTo("-2.5 C");
  }
}
