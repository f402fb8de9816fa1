package quarterturn.craft;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;

import java.util.Random;
import org.junit.jupiter.api.Test;
import quarterturn.reference.HoldsTo;
import quarterturn.reference.Reference;
import quarterturn.reference.Value;
import quarterturn.unit.Cents;
import quarterturn.unit.Force;
import quarterturn.unit.Frequency;
import quarterturn.unit.Length;
import quarterturn.unit.Note;
import quarterturn.unit.UnitWeight;

class TensionTest {
  /** One pound per inch in grams per metre: 453.59237 g and 25.4 mm, exact since 1959. */
  private static final double POUND_PER_INCH = 453.59237 / 0.0254;

  /** Standard gravity, 9.80665 m/s2, in inches. */
  private static final double GRAVITY_INCHES = 386.0886;

  /** The second way, as string makers print it: T = UW (2 L f)^2 / 386.0886, in pounds. */
  private static double pounds(double poundsPerInch, double inches, double hertz) {
    return poundsPerInch * Math.pow(2 * inches * hertz, 2) / GRAVITY_INCHES;
  }

  @Test
  @HoldsTo("tension.plain_steel")
  void plainSteelPullsAsTheReferenceSays() {
    try (Reference plain = Reference.of("tension.plain_steel")) {
      double rel = plain.tolerance("rel");
      assertThat(plain.inputs().number("density_kg_m3")).isEqualTo(StringGauge.STEEL_KG_PER_M3);
      for (String string : plain.expected().keys()) {
        // Such as d0.010_E4_L647.7: inches, note, millimetres.
        String[] parts = string.split("_", -1);
        double inches = Double.parseDouble(parts[0].substring(1));
        Frequency pitch = Temperament.ISO_16.of(Note.parse(parts[1]));
        Scale scale = new Scale(Length.mm(Double.parseDouble(parts[2].substring(1))));
        StringGauge gauge = StringGauge.plain(Length.inches(inches));
        Force force = Tension.of(scale, pitch, gauge.unitWeight());
        Value row = plain.expected().at(string);
        double poundsPerInch = gauge.unitWeight().gramsPerMetre() / POUND_PER_INCH;
        String because = string + ", " + plain.because();
        near(because, gauge.unitWeight().kgPerMetre(), row.number("mu_kg_per_m"), rel);
        near(because, poundsPerInch, row.number("unit_weight_lb_per_in"), rel);
        near(because, force.newtons(), row.number("T_N"), rel);
        near(because, force.poundForce(), row.number("T_lbf"), rel);
        near(
            because,
            pounds(poundsPerInch, scale.length().inches(), pitch.hertz()),
            row.number("T_lbf_by_unit_weight_form"),
            rel);
        near(because, Tension.stressMpa(force, gauge.steel()), row.number("stress_MPa"), rel);
        assertThat(Tension.stressMpa(force, gauge.steel())).isLessThan(Tension.BREAKS_AT_MPA);
      }
    }
  }

  @Test
  @HoldsTo("tension.scaling")
  void tensionScalesAsTheReferenceSays() {
    Scale scale = new Scale(Length.inches(34));
    UnitWeight weight = new UnitWeight(20);
    Note e1 = Note.parse("E1");
    Temperament iso = Temperament.ISO_16;
    double whole = Tension.of(scale, iso.of(e1), weight).newtons();
    try (Reference scaling = Reference.of("tension.scaling")) {
      Value ratio = scaling.expected();
      String because = scaling.because();
      double rel = scaling.tolerance("rel");
      near(
          because,
          Tension.of(scale, iso.of(new Note(e1.number() - 1)), weight).newtons() / whole,
          ratio.number("one_semitone_down_ratio"),
          rel);
      near(
          because,
          Tension.of(scale, iso.of(new Note(e1.number() - 2)), weight).newtons() / whole,
          ratio.number("two_semitones_down_ratio"),
          rel);
      Temperament low = new Temperament(new Frequency(432));
      near(
          because,
          Tension.of(scale, low.of(e1), weight).newtons() / whole,
          ratio.number("a432_vs_440_ratio"),
          rel);
      near(
          because,
          Tension.of(new Scale(Length.inches(30)), iso.of(e1), weight).newtons() / whole,
          ratio.number("scale_30_vs_34_ratio"),
          rel);
      near(
          because,
          Tension.of(scale, iso.of(e1), plain(0.105)).newtons()
              / Tension.of(scale, iso.of(e1), plain(0.100)).newtons(),
          ratio.number("gauge_105_vs_100_solid_ratio"),
          rel);
      // A pitch goes with the root of its tension.
      double sharper = Math.sqrt(whole * 1.01 / Tension.of(scale, iso.of(e1), weight).newtons());
      near(
          because,
          Cents.ofRatio(sharper).cents(),
          ratio.number("cents_from_T_change_of_1pct"),
          rel);
    }
  }

  private static UnitWeight plain(double inches) {
    return StringGauge.plain(Length.inches(inches)).unitWeight();
  }

  private static void near(String because, double actual, double expected, double rel) {
    assertWithMessage(because).that(actual).isWithin(rel * Math.abs(expected)).of(expected);
  }

  @Test
  void thePoundFormAgrees() {
    long seed = 386;
    Random random = new Random(seed);
    for (int i = 0; i < 500; i++) {
      double inches = 20 + 20 * random.nextDouble();
      double hertz = 25 + 400 * random.nextDouble();
      double poundsPerInch = 1e-5 + 2e-3 * random.nextDouble();
      Force force =
          Tension.of(
              new Scale(Length.inches(inches)),
              new Frequency(hertz),
              new UnitWeight(poundsPerInch * POUND_PER_INCH));
      double expected = pounds(poundsPerInch, inches, hertz);
      // 386.0886 is standard gravity in inches to seven digits.
      assertWithMessage("seed %s, round %s", seed, i)
          .that(force.poundForce())
          .isWithin(2e-7 * expected)
          .of(expected);
    }
  }

  @Test
  void tensionGoesWithWeightAndTheSquaresOfScaleAndPitch() {
    long seed = 4;
    Random random = new Random(seed);
    for (int i = 0; i < 500; i++) {
      double length = 0.5 + random.nextDouble();
      double pitch = 0.5 + random.nextDouble();
      double weight = 0.5 + random.nextDouble();
      double one =
          Tension.of(new Scale(Length.mm(648)), new Frequency(110), new UnitWeight(4)).newtons();
      double other =
          Tension.of(
                  new Scale(Length.mm(648 * length)),
                  new Frequency(110 * pitch),
                  new UnitWeight(4 * weight))
              .newtons();
      double expected = one * length * length * pitch * pitch * weight;
      assertWithMessage("seed %s, round %s", seed, i)
          .that(other)
          .isWithin(1e-9 * expected)
          .of(expected);
    }
  }

  /** Stress is pull over area; for plain wire 4 rho L^2 f^2, whatever its gauge. */
  @Test
  void theStressOfPlainWireDoesNotDependOnItsGauge() {
    Scale scale = new Scale(Length.mm(647.7));
    Frequency e4 = Temperament.ISO_16.of(Note.parse("E4"));
    double expected = 4 * 7850 * Math.pow(0.6477 * e4.hertz(), 2) / 1e6;
    for (double inches : new double[] {0.008, 0.010, 0.017, 0.030}) {
      StringGauge gauge = StringGauge.plain(Length.inches(inches));
      Force force = Tension.of(scale, e4, gauge.unitWeight());
      assertThat(Tension.stressMpa(force, gauge.steel())).isWithin(1e-9 * expected).of(expected);
    }
    assertThat(Tension.stressMpa(Force.newtons(Math.PI), Length.mm(2))).isWithin(1e-12).of(1);
  }
}
