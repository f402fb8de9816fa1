package quarterturn.unit;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import quarterturn.reference.HoldsTo;
import quarterturn.reference.Reference;

class CentsTest {
  @Test
  @HoldsTo("cents.to_ratio")
  void aRatioIsTwoToTheTwelfthOfAHundredth() {
    try (Reference cents = Reference.of("cents.to_ratio")) {
      double[] given = cents.inputs().numbers("cents");
      double[] ratios = cents.expected().numbers("ratio");
      assertThat(given.length).isEqualTo(ratios.length);
      for (int i = 0; i < given.length; i++) {
        // The table is printed to eight digits, so to half a unit of the last one.
        assertWithMessage(cents.because())
            .that(new Cents(given[i]).ratio())
            .isWithin(5 * cents.tolerance("rel") * ratios[i])
            .of(ratios[i]);
      }
    }
  }

  @Test
  @HoldsTo("cents.from_ratio")
  void anIntervalIsTwelveHundredLogarithmsToTheBaseTwo() {
    try (Reference cents = Reference.of("cents.from_ratio")) {
      double[] ratios = cents.inputs().numbers("ratio");
      double[] expected = cents.expected().numbers("cents");
      assertThat(ratios.length).isEqualTo(expected.length);
      for (int i = 0; i < ratios.length; i++) {
        assertWithMessage(cents.because())
            .that(Cents.ofRatio(ratios[i]).cents())
            .isWithin(cents.tolerance("abs"))
            .of(expected[i]);
      }
    }
  }

  /** The second way: the logarithm by halving the interval, with square roots alone. */
  @Test
  void squareRootsFindTheSameCents() {
    long seed = 1200;
    Random random = new Random(seed);
    for (int i = 0; i < 500; i++) {
      double ratio = 0.05 + 20 * random.nextDouble();
      assertWithMessage("seed %s, round %s, ratio %s", seed, i, ratio)
          .that(Cents.ofRatio(ratio).cents())
          .isWithin(1e-8)
          .of(byHalving(ratio));
    }
  }

  /** Octaves by doubling, then 1200, 600, 300... cents taken off while they fit. */
  private static double byHalving(double ratio) {
    double cents = 0;
    double left = ratio;
    for (; left >= 2; left /= 2) {
      cents += 1200;
    }
    for (; left < 1; left *= 2) {
      cents -= 1200;
    }
    double step = 2;
    for (double size = 1200; size > 1e-11; size /= 2) {
      if (left >= step) {
        left /= step;
        cents += size;
      }
      step = Math.sqrt(step);
    }
    return cents;
  }

  @Test
  void ratiosMultiplyWhereCentsAdd() {
    long seed = 81;
    Random random = new Random(seed);
    for (int i = 0; i < 500; i++) {
      double one = (random.nextDouble() - 0.5) * 4800;
      double other = (random.nextDouble() - 0.5) * 4800;
      assertWithMessage("seed %s, round %s", seed, i)
          .that(new Cents(one).ratio() * new Cents(other).ratio() / new Cents(one + other).ratio())
          .isWithin(1e-12)
          .of(1);
      assertThat(Cents.ofRatio(new Cents(one).ratio()).cents()).isWithin(1e-9).of(one);
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "+6|6",
        "-2.5|-2.5",
        "-2,5 cents|-2.5",
        "3c|3",
        "3 ct|3",
        "1 cent|1",
        "4 Cents|4",
        "0|0"
      })
  void everySpellingIsRead(String typed, double cents) {
    assertThat(Cents.parse(typed).cents()).isEqualTo(cents);
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "c", "cents", "3 centss", "3 cm", "three", "1e2", "3 c c", "\u0007"})
  void whatIsNoIntervalIsRefusedWithExamples(String typed) {
    NotUnderstoodException e = assertThrows(NotUnderstoodException.class, () -> Cents.parse(typed));
    assertThat(e)
        .hasMessageThat()
        .endsWith("\" is not an interval; type for example +6, -2.5 or 3 cents");
    assertThat(e).hasMessageThat().doesNotContainMatch("\\p{Cntrl}");
  }

  @Test
  void aRatioIsAboveZero() {
    for (double no : new double[] {0, -1, Double.NaN, Double.POSITIVE_INFINITY}) {
      IllegalArgumentException e =
          assertThrows(IllegalArgumentException.class, () -> Cents.ofRatio(no));
      assertThat(e).hasMessageThat().isEqualTo("a ratio of frequencies must be above zero");
    }
    assertThat(Cents.ofRatio(Double.MIN_VALUE).cents()).isLessThan(-1_000_000.0);
  }

  @Test
  void intervalsAreFinite() {
    IllegalArgumentException e =
        assertThrows(IllegalArgumentException.class, () -> new Cents(Double.NaN));
    assertThat(e).hasMessageThat().isEqualTo("an interval must be a finite number of cents");
    assertThrows(IllegalArgumentException.class, () -> new Cents(Double.NEGATIVE_INFINITY));
  }

  @ParameterizedTest
  @CsvSource({
    "6, +6 cents",
    "-2.5, -2.5 cents",
    "1, +1 cent",
    "-1, -1 cent",
    "0, 0 cents",
    "0.00001, 0 cents",
    "-0.00001, 0 cents",
    "0.99999, +1 cent",
    "10, +10 cents",
  })
  void itPrintsItsSignAndNoDigitsItDoesNotHave(double cents, String printed) {
    assertThat(new Cents(cents).toString()).isEqualTo(printed);
  }

  @Test
  void whatIsPrintedIsReadBack() {
    long seed = 701;
    Random random = new Random(seed);
    for (int i = 0; i < 2000; i++) {
      Cents cents = new Cents(Math.rint((random.nextDouble() - 0.5) * 5e7) / 1e4);
      assertWithMessage("seed %s, round %s", seed, i)
          .that(Cents.parse(cents.toString()).cents())
          .isWithin(1e-9)
          .of(cents.cents());
    }
  }
}
