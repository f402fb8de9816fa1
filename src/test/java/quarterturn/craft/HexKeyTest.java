package quarterturn.craft;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import quarterturn.reference.HoldsTo;
import quarterturn.reference.Reference;
import quarterturn.reference.Value;
import quarterturn.unit.NotUnderstoodException;

class HexKeyTest {
  private static List<String> names(String unit) {
    return HexKey.ALL.stream().map(HexKey::name).filter(name -> name.endsWith(unit)).toList();
  }

  @Test
  @HoldsTo("hex.metric_keys")
  void metricKeysAreAsTheStandardSays() {
    try (Reference keys = Reference.of("hex.metric_keys")) {
      for (String size : keys.expected().keys()) {
        double[] limits = keys.expected().numbers(size);
        HexKey key = HexKey.parse(size + "mm");
        assertThat(key.name()).isEqualTo(size + "mm");
        assertWithMessage(keys.because()).that(key.most().mm()).isEqualTo(limits[0]);
        assertWithMessage(keys.because()).that(key.least().mm()).isEqualTo(limits[1]);
        assertThat(key.nominal().mm()).isEqualTo(Double.parseDouble(size));
      }
      assertThat(names("mm"))
          .containsExactlyElementsIn(
              keys.expected().keys().stream().map(size -> size + "mm").toList());
    }
  }

  @Test
  @HoldsTo("hex.inch_keys")
  void inchKeysAreAsTheStandardSays() {
    try (Reference keys = Reference.of("hex.inch_keys")) {
      double mm = keys.tolerance("abs_mm");
      for (String size : keys.expected().keys()) {
        Value row = keys.expected().at(size);
        HexKey key = HexKey.parse(size + "in");
        assertThat(key.name()).isEqualTo(size + "in");
        String because = size + ", " + keys.because();
        assertWithMessage(because)
            .that(key.most().inches())
            .isWithin(1e-12)
            .of(row.number("max_in"));
        assertWithMessage(because)
            .that(key.least().inches())
            .isWithin(1e-12)
            .of(row.number("min_in"));
        assertWithMessage(because).that(key.most().mm()).isWithin(mm).of(row.number("max_mm"));
        assertWithMessage(because).that(key.least().mm()).isWithin(mm).of(row.number("min_mm"));
        assertWithMessage(because)
            .that(key.nominal().mm())
            .isWithin(mm)
            .of(row.number("nominal_mm"));
      }
      assertThat(names("in"))
          .containsExactlyElementsIn(
              keys.expected().keys().stream().map(size -> size + "in").toList());
    }
  }

  @Test
  void everyKeyIsFoundByItsNameAndNoTwoAreOneSize() {
    for (HexKey key : HexKey.ALL) {
      assertThat(HexKey.parse(key.name())).isEqualTo(key);
      assertThat(key.least().mm()).isLessThan(key.most().mm());
      for (HexKey other : HexKey.ALL) {
        if (!other.equals(key)) {
          assertThat(Math.abs(other.nominal().mm() - key.nominal().mm())).isGreaterThan(0.004);
        }
      }
    }
  }

  @ParameterizedTest
  @CsvSource({
    "5, 5mm",
    "5.0 mm, 5mm",
    "4.999, 5mm",
    "5.001, 5mm",
    "0.5 cm, 5mm",
    "0.1875in, 3/16in",
    ".1875 inch, 3/16in",
    "4.7625, 3/16in",
    "50 thou, .050in",
    "1.27 mm, .050in",
    "0.05 in, .050in",
  })
  void aKeyIsFoundByItsSize(String typed, String name) {
    assertThat(HexKey.parse(typed).name()).isEqualTo(name);
  }

  @ParameterizedTest
  @ValueSource(strings = {"7mm", "5.003", "4.997", "0", "-5mm", " 7 \n mm "})
  void aSizeThatIsNotMadeNamesThoseThatAre(String typed) {
    NotUnderstoodException e =
        assertThrows(NotUnderstoodException.class, () -> HexKey.parse(typed));
    assertThat(e)
        .hasMessageThat()
        .isEqualTo(
            "there is no key of "
                + typed.strip().replace('\n', '\uFFFD')
                + "; there are 0.7mm, 0.9mm, 1.3mm, 1.5mm, 2mm, 2.5mm, 3mm, 4mm, 5mm, 6mm, 8mm,"
                + " .028in, .035in, .050in, 1/16in, 5/64in, 3/32in, 7/64in, 1/8in, 9/64in, 5/32in,"
                + " 3/16in, 7/32in, 1/4in, 5/16in");
  }

  @Test
  void whatIsNoLengthIsRefused() {
    NotUnderstoodException e =
        assertThrows(NotUnderstoodException.class, () -> HexKey.parse("five"));
    assertThat(e).hasMessageThat().contains("\"five\" is not a length");
  }
}
