package quarterturn.craft;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Arrays;
import org.apache.commons.math3.linear.EigenDecomposition;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;
import org.junit.jupiter.api.Test;
import quarterturn.reference.HoldsTo;
import quarterturn.reference.Reference;
import quarterturn.reference.Value;
import quarterturn.unit.Cents;
import quarterturn.unit.Force;
import quarterturn.unit.Length;
import quarterturn.unit.NotUnderstoodException;

/** How stiffness spreads a string's partials. */
class StiffnessTest {
  @Test
  @HoldsTo("intonation.inharmonicity")
  void inharmonicityAgreesWithTheReference() {
    try (Reference reference = Reference.of("intonation.inharmonicity")) {
      double rel = reference.tolerance("rel");
      assertThat(StringGauge.STEEL_PASCAL).isEqualTo(reference.inputs().number("E_Pa"));
      for (String key : reference.expected().keys()) {
        ReferenceString string = ReferenceString.of(key);
        Value wanted = reference.expected().at(key);
        Length length = string.scale().length();
        Stiffness open = Stiffness.of(length, string.tension(), string.gauge().steel());
        near(key, open.b(), wanted.number("B_pinned"), rel);
        if (!wanted.at("B_if_whole_wound_dia_counted").isNull()) {
          near(
              key,
              Stiffness.of(length, string.tension(), string.gauge().diameter()).b(),
              wanted.number("B_if_whole_wound_dia_counted"),
              rel);
        }
        Stiffness octave =
            Stiffness.of(
                Length.mm(string.scale().speakingMm(12)), string.tension(), string.gauge().steel());
        near(key, octave.b(), wanted.number("B_at_fret12"), rel);
        double[] partials = wanted.numbers("partial_cents_n2_n5_n10");
        near(key, open.sharpness(2).cents(), partials[0], rel);
        near(key, open.sharpness(5).cents(), partials[1], rel);
        near(key, open.sharpness(10).cents(), partials[2], rel);
        // At half length the first partial goes by 4 B, as the second of the open string does.
        near(key, first(octave) - first(open), wanted.number("open_to_12_shift_pinned_cents"), rel);
        near(
            key,
            clamping(octave) - clamping(open),
            wanted.number("open_to_12_shift_clamped_cents"),
            rel);
      }
    }
  }

  /** How far stiffness raises the first partial of pinned ends. */
  private static double first(Stiffness stiffness) {
    return Cents.ofRatio(Math.sqrt(1 + stiffness.b())).cents();
  }

  /**
   * How far clamped ends raise the whole note over pinned ones: the factor 1 + (2/pi) sqrt(B), to
   * first order; from memory (JASA 36 (1964) 203).
   */
  private static double clamping(Stiffness stiffness) {
    return Cents.ofRatio(1 + 2 / Math.PI * Math.sqrt(stiffness.b())).cents();
  }

  private static void near(String what, double value, double wanted, double rel) {
    assertWithMessage(what).that(value).isWithin(Math.abs(wanted) * rel).of(wanted);
  }

  /** JASA 24 (1952) 267, abstract: 3.4e13 n^2 d^2 / (f^2 l^4) cents, Q/rho = 25.5e10, in cm. */
  @Test
  @HoldsTo("intonation.JASA1952_check")
  void thePrintedFormulaOfAPianoStringAgrees() {
    try (Reference reference = Reference.of("intonation.JASA1952_check")) {
      double d = reference.inputs().number("d_cm") * 10;
      double l = reference.inputs().number("l_cm") * 10;
      double f = reference.inputs().number("f_hz");
      // T = 4 mu L^2 f^2 with the density that makes Q/rho what the paper takes.
      double density =
          StringGauge.STEEL_PASCAL / (reference.inputs().number("E_over_rho_cgs") * 1e-4);
      double mu = density * StringGauge.area(Length.mm(d));
      Force tension = Force.newtons(4 * mu * Math.pow(l / 1000 * f, 2));
      Stiffness stiffness = Stiffness.of(Length.mm(l), tension, Length.mm(d));
      double cents = Cents.ofRatio(Math.sqrt(1 + stiffness.b())).cents();
      double rel = reference.tolerance("rel");
      near("n = 1", cents, reference.expected().number("cents_n1_from_B"), rel);
      near("n = 1", cents, reference.expected().number("cents_n1_from_printed"), rel);
      double coefficient = cents * f * f * Math.pow(l / 10, 4) / Math.pow(d / 10, 2);
      near("c", coefficient, reference.expected().number("coefficient_from_B_formula"), rel);
      near("c", coefficient, reference.expected().number("printed_coefficient"), rel);
    }
  }

  /**
   * A second way: the stiff string's own equation, T y'' - E I y'''' = -mu w^2 y, as a matrix of
   * finite differences with pinned ends, its lowest frequencies from a numeric library.
   */
  @Test
  void theEigenvaluesOfAStiffStringAgree() {
    double length = 0.6477;
    double tension = 70;
    double diameter = 1.2e-3;
    double bending = StringGauge.STEEL_PASCAL * Math.PI * Math.pow(diameter, 4) / 64;
    int points = 400;
    double h = length / (points + 1);
    RealMatrix second = MatrixUtils.createRealMatrix(points, points);
    for (int i = 0; i < points; i++) {
      second.setEntry(i, i, 2 / (h * h));
      if (i > 0) {
        second.setEntry(i, i - 1, -1 / (h * h));
        second.setEntry(i - 1, i, -1 / (h * h));
      }
    }
    RealMatrix whole =
        second.scalarMultiply(tension).add(second.multiply(second).scalarMultiply(bending));
    double[] squares = new EigenDecomposition(whole).getRealEigenvalues();
    Arrays.sort(squares);
    Stiffness stiffness =
        Stiffness.of(Length.mm(length * 1000), Force.newtons(tension), Length.mm(diameter * 1000));
    for (int n = 2; n <= 6; n++) {
      double ratio = Math.sqrt(squares[n - 1] / squares[0]) / n;
      assertWithMessage("partial " + n)
          .that(stiffness.sharpness(n).cents())
          .isWithin(0.005 * n * n + 0.01)
          .of(Cents.ofRatio(ratio).cents());
    }
  }

  @Test
  void scalesAsItsFormulaSays() {
    Force tension = Force.newtons(100);
    double b = Stiffness.of(Length.mm(600), tension, Length.mm(0.5)).b();
    assertThat(Stiffness.of(Length.mm(300), tension, Length.mm(0.5)).b())
        .isWithin(b * 1e-12)
        .of(4 * b);
    assertThat(Stiffness.of(Length.mm(600), tension, Length.mm(1)).b())
        .isWithin(b * 1e-9)
        .of(16 * b);
    assertThat(Stiffness.of(Length.mm(600), Force.newtons(200), Length.mm(0.5)).b())
        .isWithin(b * 1e-12)
        .of(b / 2);
  }

  @Test
  void anIdealStringIsHarmonic() {
    Stiffness none = new Stiffness(0);
    assertThat(none.sharpness(7).cents()).isEqualTo(0.0);
    assertThrows(IllegalArgumentException.class, () -> new Stiffness(-1e-9));
    assertThrows(IllegalArgumentException.class, () -> new Stiffness(Double.NaN));
    assertThrows(IllegalArgumentException.class, () -> new Stiffness(Double.POSITIVE_INFINITY));
    assertThat(
            assertThrows(
                NotUnderstoodException.class,
                () -> Stiffness.of(Length.mm(600), Force.newtons(0), Length.mm(0.5))))
        .hasMessageThat()
        .contains("tension and its length must be above zero");
    assertThrows(
        NotUnderstoodException.class,
        () -> Stiffness.of(Length.mm(0), Force.newtons(9), Length.mm(0.5)));
  }
}
