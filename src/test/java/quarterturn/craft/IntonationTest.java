package quarterturn.craft;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.SplittableRandom;
import org.apache.commons.math3.analysis.solvers.BisectionSolver;
import org.junit.jupiter.api.Test;
import quarterturn.reference.HoldsTo;
import quarterturn.reference.Reference;
import quarterturn.reference.Value;
import quarterturn.unit.Cents;
import quarterturn.unit.Length;
import quarterturn.unit.NotUnderstoodException;

/** How far the saddle must move. */
class IntonationTest {
  private static final long SEED = 20_270_304;

  @Test
  @HoldsTo("intonation.travel")
  void travelAgreesWithTheReference() {
    try (Reference reference = Reference.of("intonation.travel")) {
      double tolerance = reference.tolerance("abs_mm");
      Value scales = reference.expected().at("saddle_travel_mm_away_from_nut");
      for (String length : scales.keys()) {
        Scale scale = new Scale(Length.parse(length));
        for (double cents : reference.inputs().numbers("cents_fretted12_minus_harmonic12")) {
          double wanted = scales.at(length).number(Integer.toString((int) cents));
          assertWithMessage(reference.because() + " " + length + " " + cents)
              .that(Intonation.travel(scale, 12, new Cents(cents)).mm())
              .isWithin(tolerance)
              .of(wanted);
        }
        assertThat(Intonation.mmPerCent(scale, 12))
            .isWithin(1e-7)
            .of(reference.expected().at("mm_per_cent_first_order").number(length));
      }
    }
  }

  @Test
  @HoldsTo("intonation.travel_general")
  void travelOfASaddleThatIsSetBackAgreesWithTheReference() {
    try (Reference reference = Reference.of("intonation.travel_general")) {
      double place = reference.inputs().number("x12_mm");
      double tolerance = reference.tolerance("abs_mm");
      for (String key : reference.expected().keys()) {
        Value wanted = reference.expected().at(key);
        String[] parts = key.split("_", -1);
        double string =
            Double.parseDouble(parts[1])
                + Double.parseDouble(parts[2].substring("offset".length()));
        Cents cents = new Cents(Double.parseDouble(parts[3].substring(1)));
        assertWithMessage(reference.because() + " " + key)
            .that(Intonation.travel(Length.mm(string), Length.mm(place), 12, cents).mm())
            .isWithin(tolerance)
            .of(wanted.number("general_mm"));
        assertWithMessage(reference.because() + " " + key)
            .that(Intonation.travel(new Scale(Length.mm(string)), 12, cents).mm())
            .isWithin(tolerance)
            .of(wanted.number("simple_mm"));
      }
    }
  }

  /**
   * A second way: bisection on what must hold, fretted over open equal to 2^(n/12) after the move.
   */
  @Test
  void bisectionFindsTheSame() {
    SplittableRandom random = new SplittableRandom(SEED);
    for (int i = 0; i < 500; i++) {
      double scale = 500 + 500 * random.nextDouble();
      double string = scale + 6 * random.nextDouble() - 1;
      int fret = 5 + random.nextInt(18);
      double place = scale * (1 - Math.pow(0.5, fret / 12.0));
      double cents = 60 * random.nextDouble() - 30;
      double wanted = Math.pow(2, fret / 12.0);
      // What is heard: the fretted note over the open string, sharp by so many cents.
      double heard = wanted * Math.pow(2, cents / 1200);
      double stretch = heard * (string - place) / string;
      double travel =
          new BisectionSolver(1e-12)
              .solve(
                  500,
                  d -> stretch * (string + d) / (string + d - place) - wanted,
                  -0.4 * (string - place),
                  string);
      assertWithMessage("seed " + SEED + ", " + i)
          .that(Intonation.travel(Length.mm(string), Length.mm(place), fret, new Cents(cents)).mm())
          .isWithin(1e-6)
          .of(travel);
    }
  }

  /** At fret 12 the general form is d = L (1 - q) / (2 q - 1). */
  @Test
  void theFormForTheOctaveIsTheGeneralOne() {
    for (double cents = -100; cents <= 100; cents += 7) {
      double q = Math.pow(2, -cents / 1200);
      assertThat(Intonation.travel(new Scale(Length.mm(648)), 12, new Cents(cents)).mm())
          .isWithin(1e-9)
          .of(648 * (1 - q) / (2 * q - 1));
    }
  }

  @Test
  void mmPerCentIsTheSlopeAtNothing() {
    for (int fret : new int[] {1, 5, 12, 17, 24}) {
      Scale scale = new Scale(Length.mm(864));
      double slope =
          (Intonation.travel(scale, fret, new Cents(1e-3)).mm()
                  - Intonation.travel(scale, fret, new Cents(-1e-3)).mm())
              / 2e-3;
      assertThat(Intonation.mmPerCent(scale, fret)).isWithin(1e-5).of(slope);
    }
  }

  @Test
  void travelScalesWithTheStringAndGrowsWithTheError() {
    SplittableRandom random = new SplittableRandom(SEED);
    for (int i = 0; i < 500; i++) {
      Cents cents = new Cents(80 * random.nextDouble() - 40);
      double travel = Intonation.travel(new Scale(Length.mm(300)), 12, cents).mm();
      assertThat(Intonation.travel(new Scale(Length.mm(900)), 12, cents).mm())
          .isWithin(1e-9)
          .of(3 * travel);
      assertThat(Math.signum(travel)).isEqualTo(Math.signum(cents.cents()));
      assertThat(
              Intonation.travel(new Scale(Length.mm(300)), 12, new Cents(cents.cents() + 1)).mm())
          .isGreaterThan(travel);
    }
  }

  @Test
  void refusesWhatCannotBe() {
    Scale scale = new Scale(Length.mm(864));
    assertThat(
            assertThrows(
                NotUnderstoodException.class, () -> Intonation.travel(scale, 12, new Cents(1200))))
        .hasMessageThat()
        .contains("no saddle travel mends +1200 cents at fret 12");
    assertThat(Intonation.travel(scale, 12, new Cents(1199)).mm()).isGreaterThan(0);
    assertThat(
            assertThrows(
                NotUnderstoodException.class, () -> Intonation.travel(scale, 0, new Cents(1))))
        .hasMessageThat()
        .contains("between 1 and 36, not 0");
    for (double place : new double[] {0, 864, 900}) {
      assertThat(
              assertThrows(
                  NotUnderstoodException.class,
                  () -> Intonation.travel(Length.mm(864), Length.mm(place), 12, new Cents(1))))
          .hasMessageThat()
          .contains("between the nut and the saddle");
    }
    assertThrows(NotUnderstoodException.class, () -> Intonation.mmPerCent(scale, 0));
    assertThrows(NotUnderstoodException.class, () -> Intonation.mmPerCent(scale, 37));
    assertThat(Intonation.mmPerCent(scale, 36)).isGreaterThan(0);
    assertThat(Intonation.mmPerCent(scale, 1)).isGreaterThan(0);
  }
}
