package quarterturn.craft;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Random;
import org.apache.commons.math3.analysis.integration.IterativeLegendreGaussIntegrator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import quarterturn.unit.NotUnderstoodException;

class BendTest {
  private static double tent(double x, double peak, double joint) {
    return x < peak ? x / peak : (joint - x) / (joint - peak);
  }

  /** The second way: the beam's equation solved on a grid of 1.8 mm. */
  @Test
  void anEvenBendAgreesWithANumericBeam() {
    double joint = 540;
    NumericBeam beam = NumericBeam.bent(joint, 300, x -> 1e-5);
    Bend bend = new Bend.Uniform();
    for (double x = 0; x <= 700; x += 13.7) {
      assertThat(1e-5 * bend.height(x, joint)).isWithin(1e-6).of(beam.height(x));
    }
  }

  @ParameterizedTest
  @ValueSource(doubles = {90, 216, 270, 450})
  void aPeakedBendAgreesWithANumericBeam(double peak) {
    double joint = 540;
    // A cell for each 0.9 mm, so that the peak lies on the grid.
    NumericBeam beam = NumericBeam.bent(joint, 600, x -> 1e-5 * tent(x, peak, joint));
    Bend bend = new Bend.Peaked(peak);
    assertThat(bend.height(0, joint)).isGreaterThan(10_000.0);
    for (double x = 0; x <= 700; x += 13.7) {
      assertWithMessage("at %s", x)
          .that(1e-5 * bend.height(x, joint))
          .isWithin(3e-5)
          .of(beam.height(x));
    }
  }

  /** A third way: the integral of the curvature times its arm, by quadrature. */
  @Test
  void bothBendsAreTheIntegralOfTheirCurvature() {
    long seed = 60;
    Random random = new Random(seed);
    IterativeLegendreGaussIntegrator sum = new IterativeLegendreGaussIntegrator(5, 1e-12, 1e-10);
    for (int i = 0; i < 100; i++) {
      double joint = 200 + 500 * random.nextDouble();
      double peak = joint * (0.05 + 0.9 * random.nextDouble());
      double x = joint * 0.999 * random.nextDouble();
      double even = sum.integrate(100_000, t -> t - x, x, joint);
      double rising =
          x < peak ? sum.integrate(100_000, t -> (t - x) * tent(t, peak, joint), x, peak) : 0;
      double falling =
          sum.integrate(100_000, t -> (t - x) * tent(t, peak, joint), Math.max(x, peak), joint);
      assertWithMessage("seed %s, round %s", seed, i)
          .that(new Bend.Uniform().height(x, joint))
          .isWithin(1e-6)
          .of(even);
      assertWithMessage("seed %s, round %s", seed, i)
          .that(new Bend.Peaked(peak).height(x, joint))
          .isWithin(1e-6)
          .of(rising + falling);
    }
  }

  @Test
  void theBoardIsFlatFromTheJointOn() {
    for (Bend bend : new Bend[] {new Bend.Uniform(), new Bend.Peaked(200)}) {
      assertThat(bend.height(540, 540)).isEqualTo(0.0);
      assertThat(bend.height(540.001, 540)).isEqualTo(0.0);
      assertThat(bend.height(900, 540)).isEqualTo(0.0);
      assertThat(bend.height(539, 540)).isGreaterThan(0.0);
    }
  }

  @Test
  void thePeakJoinsItsTwoSidesSmoothly() {
    Bend bend = new Bend.Peaked(200);
    double step = 1e-3;
    double before = bend.height(200 - step, 540);
    double at = bend.height(200, 540);
    double after = bend.height(200 + step, 540);
    assertThat((before - at) / step).isWithin(0.01).of(170);
    assertThat((at - after) / step).isWithin(0.01).of(170);
    assertThat((before - 2 * at + after) / (step * step)).isWithin(0.02).of(1);
  }

  /** Height has the measure of curvature times length squared. */
  @Test
  void heightsScaleWithTheSquareOfAllLengths() {
    long seed = 2;
    Random random = new Random(seed);
    for (int i = 0; i < 200; i++) {
      double factor = 0.3 + 3 * random.nextDouble();
      double x = 600 * random.nextDouble();
      double peak = 20 + 480 * random.nextDouble();
      for (Bend[] pair :
          new Bend[][] {
            {new Bend.Uniform(), new Bend.Uniform()},
            {new Bend.Peaked(peak), new Bend.Peaked(peak * factor)}
          }) {
        assertWithMessage("seed %s, round %s", seed, i)
            .that(pair[1].height(x * factor, 540 * factor))
            .isWithin(1e-6)
            .of(pair[0].height(x, 540) * factor * factor);
      }
    }
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, -1, 540, 541, Double.NaN})
  void aPeakLiesBetweenNutAndJoint(double peak) {
    Bend bend = new Bend.Peaked(peak);
    for (double x : new double[] {0, 600}) {
      NotUnderstoodException e =
          assertThrows(NotUnderstoodException.class, () -> bend.height(x, 540));
      assertThat(e)
          .hasMessageThat()
          .isEqualTo("a bend's peak must lie between the nut and the joint");
    }
  }
}
