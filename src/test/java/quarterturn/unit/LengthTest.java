package quarterturn.unit;

import static com.google.common.truth.Truth.assertThat;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class LengthTest {
  /** The international yard and pound agreement of 1959: one yard is 0.9144 m exactly. */
  @Test
  void anInchIsExactly25Point4Millimetres() {
    assertThat(Length.MM_PER_INCH).isEqualTo(25.4);
    assertThat(36 * Length.MM_PER_INCH).isWithin(1e-9).of(914.4);
    assertThat(Length.inches(1)).isEqualTo(Length.mm(25.4));
    assertThat(Length.mm(25.4).inches()).isEqualTo(1.0);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "0.3|0.3",
        "0.30|0.3",
        "0,30 mm|0.3",
        "0.30mm|0.3",
        ".3|0.3",
        "3.|3",
        "3|3",
        "+0.3|0.3",
        "-0.3|-0.3",
        "2 cm|20",
        "0.65 m|650",
        ".012\"|0.3048",
        ".012 in|0.3048",
        ".012''|0.3048",
        ".012″|0.3048",
        "12 thou|0.3048",
        "12thou|0.3048",
        "12 MIL|0.3048",
        "1/64 in|0.396875",
        "1 / 64 inch|0.396875",
        "34in|863.6",
        "34 inches|863.6",
        "`  0.3  `|0.3",
      })
  void everySpellingIsRead(String typed, double mm) {
    assertThat(Length.parse(typed).mm()).isWithin(1e-9).of(mm);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        " ",
        ".",
        ",",
        "mm",
        "in",
        "a",
        "0.3 furlongs",
        "1/0",
        "1/0 in",
        "1//2",
        "0.3.4",
        "1e3",
        "NaN",
        "Infinity",
        "0x1",
        "--3",
        "0.3 mm mm",
        "1234567",
        "0.3\nmm\n4",
        "\u001b[2J"
      })
  void whatIsNoLengthIsRefusedWithAnExample(String typed) {
    NotUnderstoodException e =
        assertThrows(NotUnderstoodException.class, () -> Length.parse(typed));
    assertThat(e).hasMessageThat().contains("type for example 0.30, 0.30 mm, .012\", 12 thou or");
    assertThat(e).hasMessageThat().doesNotContainMatch("\\p{Cntrl}");
  }

  @Test
  void theExamplesInTheMessageAreUnderstood() {
    for (String example : new String[] {"0.30", "0.30 mm", ".012\"", "12 thou", "1/64 in"}) {
      assertThat(Length.parse(example).mm()).isGreaterThan(0.0);
    }
  }

  @Test
  void whatIsPrintedIsReadBack() {
    Random random = new Random(1959);
    for (int i = 0; i < 2000; i++) {
      Length length = Length.mm(Math.rint((random.nextDouble() - 0.5) * 2e7) / 1e4);
      assertThat(Length.parse(length.toString()).mm()).isWithin(1e-9).of(length.mm());
    }
  }

  @Test
  void itPrintsNoDigitsItDoesNotHave() {
    assertThat(Length.mm(0.3).toString()).isEqualTo("0.3 mm");
    assertThat(Length.inches(0.012).toString()).isEqualTo("0.3048 mm");
    assertThat(Length.mm(0.1 + 0.2).toString()).isEqualTo("0.3 mm");
    assertThat(Length.mm(650).toString()).isEqualTo("650 mm");
    assertThat(Length.mm(-0.0).toString()).isEqualTo("0 mm");
  }

  @Test
  void lengthsAreFinite() {
    assertThrows(IllegalArgumentException.class, () -> Length.mm(Double.NaN));
    assertThrows(IllegalArgumentException.class, () -> Length.mm(Double.POSITIVE_INFINITY));
  }
}
