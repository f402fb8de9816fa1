package quarterturn.unit;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class UnitWeightTest {
  /** One pound is 453.59237 g, one inch 25.4 mm; exact since 1959. */
  @Test
  void aPoundPerInchIsExact() {
    double gramsPerInch = UnitWeight.parse("1 lb/in").gramsPerMetre() * 0.0254;
    assertThat(gramsPerInch).isWithin(1e-10).of(453.59237);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "23.5|23.5",
        "23,5 g/m|23.5",
        "23.5g/m|23.5",
        "23.5 G / M|23.5",
        "0.0235 kg/m|23.5",
        "0.0235 kg / m|23.5",
        "1 lb/in|17857.9673228346",
        "0.0013 LB/IN|23.2153575197",
      })
  void everySpellingIsRead(String typed, double gramsPerMetre) {
    assertThat(UnitWeight.parse(typed).gramsPerMetre()).isWithin(1e-9).of(gramsPerMetre);
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "g/m", "23.5 g", "23.5 lb/ft", "heavy", "1e3 g/m", "\u001b[2J"})
  void whatIsNoUnitWeightIsRefusedWithExamples(String typed) {
    NotUnderstoodException e =
        assertThrows(NotUnderstoodException.class, () -> UnitWeight.parse(typed));
    assertThat(e)
        .hasMessageThat()
        .endsWith("\" is not a unit weight; type for example 23.5, 23.5 g/m or 0.0013 lb/in");
    assertThat(e).hasMessageThat().doesNotContainMatch("\\p{Cntrl}");
  }

  @ParameterizedTest
  @ValueSource(strings = {"0", "-3", "0 kg/m", "-0.001 lb/in"})
  void itIsAboveZero(String typed) {
    NotUnderstoodException e =
        assertThrows(NotUnderstoodException.class, () -> UnitWeight.parse(typed));
    assertThat(e).hasMessageThat().isEqualTo("a unit weight must be above zero");
  }

  @Test
  void itIsANumber() {
    assertThrows(NotUnderstoodException.class, () -> new UnitWeight(Double.NaN));
    assertThrows(NotUnderstoodException.class, () -> new UnitWeight(Double.POSITIVE_INFINITY));
    assertThat(new UnitWeight(Double.MIN_VALUE).gramsPerMetre()).isGreaterThan(0.0);
  }

  @Test
  void whatIsPrintedIsReadBack() {
    long seed = 453;
    Random random = new Random(seed);
    for (int i = 0; i < 2000; i++) {
      UnitWeight weight = new UnitWeight(Math.rint(1 + random.nextDouble() * 1e6) / 1e4);
      assertWithMessage("seed %s, round %s", seed, i)
          .that(UnitWeight.parse(weight.toString()))
          .isEqualTo(weight);
      assertThat(weight.kgPerMetre() * 1000).isWithin(1e-12).of(weight.gramsPerMetre());
    }
  }

  @Test
  void unitWeightsArePrinted() {
    assertThat(new UnitWeight(0.39776537).toString()).isEqualTo("0.3978 g/m");
  }
}
