package quarterturn.unit;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class FrequencyTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "41.2|41.2",
        "41,2 Hz|41.2",
        "41.2hz|41.2",
        "41.2  HZ|41.2",
        "+440|440",
        "`  440 `|440",
        ".5|0.5",
      })
  void everySpellingIsRead(String typed, double hertz) {
    assertThat(Frequency.parse(typed).hertz()).isEqualTo(hertz);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "Hz",
        "E1",
        "41.2 kHz",
        "41.2 Hz Hz",
        "1e3",
        "NaN",
        "Infinity",
        "41.2 N",
        "\u001b[2J"
      })
  void whatIsNoFrequencyIsRefusedWithExamples(String typed) {
    NotUnderstoodException e =
        assertThrows(NotUnderstoodException.class, () -> Frequency.parse(typed));
    assertThat(e)
        .hasMessageThat()
        .endsWith("\" is not a frequency; type for example 41.2 or 41.2 Hz");
    assertThat(e).hasMessageThat().doesNotContainMatch("\\p{Cntrl}");
  }

  @ParameterizedTest
  @ValueSource(strings = {"0", "0.000 Hz", "-41.2", "-0.001 Hz"})
  void itIsAboveZero(String typed) {
    NotUnderstoodException e =
        assertThrows(NotUnderstoodException.class, () -> Frequency.parse(typed));
    assertThat(e).hasMessageThat().isEqualTo("a frequency must be above zero");
  }

  @Test
  void itIsANumber() {
    assertThrows(NotUnderstoodException.class, () -> new Frequency(Double.NaN));
    assertThrows(NotUnderstoodException.class, () -> new Frequency(Double.POSITIVE_INFINITY));
    assertThat(new Frequency(Double.MIN_VALUE).hertz()).isGreaterThan(0.0);
  }

  @Test
  void whatIsPrintedIsReadBack() {
    long seed = 440;
    Random random = new Random(seed);
    for (int i = 0; i < 2000; i++) {
      Frequency frequency = new Frequency(Math.rint(1 + random.nextDouble() * 1e8) / 1e4);
      assertWithMessage("seed %s, round %s", seed, i)
          .that(Frequency.parse(frequency.toString()))
          .isEqualTo(frequency);
    }
  }

  @Test
  void frequenciesArePrinted() {
    assertThat(new Frequency(41.20344461).toString()).isEqualTo("41.2034 Hz");
    assertThat(new Frequency(440).toString()).isEqualTo("440 Hz");
  }
}
