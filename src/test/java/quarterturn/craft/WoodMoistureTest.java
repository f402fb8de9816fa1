package quarterturn.craft;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import quarterturn.reference.HoldsTo;
import quarterturn.reference.Reference;
import quarterturn.reference.Value;
import quarterturn.unit.Humidity;
import quarterturn.unit.NotUnderstoodException;
import quarterturn.unit.Temperature;

class WoodMoistureTest {
  private static double at(double celsius, double humidity) {
    return WoodMoisture.percent(new Temperature(celsius), new Humidity(humidity));
  }

  /** The second way: the printed table, Wood Handbook table 4-2, rounded to a tenth. */
  @Test
  @HoldsTo("emc.table_4_2")
  void theEquationAgreesWithThePrintedTable() {
    try (Reference table = Reference.of("emc.table_4_2")) {
      int cells = 0;
      for (String cell : table.expected().keys()) {
        Matcher m = Pattern.compile("T(\\d+)F_RH(\\d+)").matcher(cell);
        assertThat(m.matches()).isTrue();
        Temperature temperature = Temperature.fahrenheit(Double.parseDouble(m.group(1)));
        Humidity humidity = new Humidity(Double.parseDouble(m.group(2)));
        double moisture = WoodMoisture.percent(temperature, humidity);
        Value value = table.expected().at(cell);
        assertWithMessage(cell + ", " + table.because())
            .that(moisture)
            .isWithin(table.tolerance("abs_pct_MC"))
            .of(value.number("printed"));
        assertWithMessage(cell + ", " + table.because())
            .that(moisture)
            .isWithin(1e-6)
            .of(value.number("equation"));
        cells++;
      }
      assertThat((double) cells).isEqualTo(table.inputs().number("cells"));
    }
  }

  /**
   * A third way: the older edition's coefficients for degrees Fahrenheit (FPL-GTR-113, 1999,
   * equation 3-3; from memory), fitted to the same data.
   */
  @Test
  void theOlderEditionsCoefficientsAgree() {
    for (int f = 30; f <= 110; f += 5) {
      double w = 330 + 0.452 * f + 0.00415 * f * f;
      double k = 0.791 + 0.000463 * f - 0.000000844 * f * f;
      double k1 = 6.34 + 0.000775 * f - 0.0000935 * f * f;
      double k2 = 1.09 + 0.0284 * f - 0.0000904 * f * f;
      for (int percent = 5; percent <= 90; percent += 5) {
        double kh = k * percent / 100;
        double above = k1 * kh + 2 * k1 * k2 * kh * kh;
        double below = 1 + k1 * kh + k1 * k2 * kh * kh;
        double expected = 1800 / w * (kh / (1 - kh) + above / below);
        assertWithMessage("%s F, %s %%", f, percent)
            .that(WoodMoisture.percent(Temperature.fahrenheit(f), new Humidity(percent)))
            .isWithin(0.06)
            .of(expected);
      }
    }
  }

  @Test
  void dampAirWetsWoodAndWarmthDriesIt() {
    long seed = 282;
    Random random = new Random(seed);
    for (int i = 0; i < 500; i++) {
      double celsius = 10 + 60 * random.nextDouble();
      double humidity = 5 + 85 * random.nextDouble();
      assertWithMessage("seed %s, round %s", seed, i)
          .that(at(celsius, humidity + 1))
          .isGreaterThan(at(celsius, humidity));
      assertWithMessage("seed %s, round %s", seed, i)
          .that(at(celsius + 1, humidity))
          .isLessThan(at(celsius, humidity));
    }
    assertThat(at(21, 0)).isEqualTo(0.0);
    // Wood's fibres are full at about 30 percent (Wood Handbook, chapter 4).
    assertThat(at(21, 100)).isWithin(5).of(28);
  }

  @Test
  void theRangeIncludesItsEnds() {
    assertThat(at(-40, 50)).isGreaterThan(0.0);
    assertThat(at(100, 50)).isGreaterThan(0.0);
  }

  @ParameterizedTest
  @ValueSource(doubles = {-40.01, 100.01, 200})
  void beyondTheRangeItIsNotKnown(double celsius) {
    NotUnderstoodException e = assertThrows(NotUnderstoodException.class, () -> at(celsius, 50));
    assertThat(e).hasMessageThat().isEqualTo("wood moisture is known between -40 and 100 C");
  }
}
