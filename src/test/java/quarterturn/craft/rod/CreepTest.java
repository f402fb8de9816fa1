package quarterturn.craft.rod;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import quarterturn.reference.HoldsTo;
import quarterturn.reference.Reference;
import quarterturn.reference.Value;

class CreepTest {
  private static double hours(String unit) {
    return switch (unit) {
      case "min" -> 1 / 60.0;
      case "h" -> 1;
      case "day", "days" -> 24;
      case "week" -> 7 * 24;
      case "month" -> 30 * 24;
      case "year", "years" -> 365 * 24;
      default -> throw new AssertionError(unit);
    };
  }

  @Test
  @HoldsTo("creep.power_law")
  void aNeckCreepsAsTheEstimateSays() {
    try (Reference law = Reference.of("creep.power_law")) {
      double[] exponents = law.inputs().numbers("n");
      assertThat(law.expected().keys()).hasSize(exponents.length);
      for (double n : exponents) {
        Value shares = law.expected().at("n" + n);
        for (String time : shares.keys()) {
          String[] parts = time.split(" ", -1);
          double hours = Double.parseDouble(parts[0]) * hours(parts[1]);
          double share = shares.number(time);
          assertWithMessage(time + ", " + law.because())
              .that(new Creep(n).share(hours))
              .isWithin(law.tolerance("rel") * share)
              .of(share);
        }
      }
      assertThat(exponents).usingExactEquality().contains(Creep.USUAL.n());
    }
  }

  /** The second way: at an exponent of a quarter, sixteen times as long means twice as far. */
  @Test
  void fourSquareRootsFindTheSameShare() {
    long seed = 190;
    Random random = new Random(seed);
    for (int i = 0; i < 300; i++) {
      double hours = 2000 * random.nextDouble();
      assertWithMessage("seed %s, round %s", seed, i)
          .that(Creep.USUAL.share(16 * hours))
          .isWithin(1e-12)
          .of(2 * Creep.USUAL.share(hours));
      assertThat(Creep.USUAL.share(hours))
          .isWithin(1e-12)
          .of(Math.sqrt(Math.sqrt(hours / (3 * 8760))));
    }
  }

  @Test
  void nothingHasCreptBeforeTheChange() {
    assertThat(Creep.USUAL.share(0)).isEqualTo(0.0);
    assertThat(Creep.USUAL.share(-5)).isEqualTo(0.0);
    assertThat(Creep.USUAL.share(3 * 8760)).isEqualTo(1.0);
    assertThat(Creep.USUAL.share(4 * 8760)).isGreaterThan(1.0);
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, 1, -0.1, 1.1, Double.NaN})
  void anExponentLiesBetweenNothingAndOne(double n) {
    IllegalArgumentException e = assertThrows(IllegalArgumentException.class, () -> new Creep(n));
    assertThat(e).hasMessageThat().isEqualTo("a creep exponent lies between 0 and 1");
  }
}
