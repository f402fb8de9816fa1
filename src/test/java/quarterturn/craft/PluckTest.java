package quarterturn.craft;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import quarterturn.reference.HoldsTo;
import quarterturn.reference.Reference;
import quarterturn.reference.Value;
import quarterturn.unit.Force;
import quarterturn.unit.Length;
import quarterturn.unit.NotUnderstoodException;

/** A stroke: its amplitude, and how deep the string comes. */
class PluckTest {
  private static final long SEED = 20_270_301;

  private static Pluck pluck(double newtons, double fromSaddle, double share) {
    return pluck(newtons, fromSaddle, Pluck.Way.PUSHED, share);
  }

  private static Pluck pluck(double newtons, double fromSaddle, Pluck.Way way, double share) {
    return new Pluck(Force.newtons(newtons), Length.mm(fromSaddle), way, share);
  }

  @Test
  @HoldsTo("pluck.stiffness")
  void theForceForAMillimetreAgreesWithTheReference() {
    try (Reference reference = Reference.of("pluck.stiffness")) {
      Force tension = Force.newtons(reference.inputs().number("T_N"));
      Scale scale = new Scale(Length.mm(reference.inputs().number("L_mm")));
      double rel = reference.tolerance("rel");
      for (String key : reference.expected().keys()) {
        Value wanted = reference.expected().at(key);
        double d = Double.parseDouble(key.substring(1, key.indexOf('_')));
        double speaking = scale.speakingMm(Integer.parseInt(key.substring(key.indexOf('k') + 1)));
        double perNewton = pluck(1, d, 0).amplitudeMm(tension, speaking);
        double force = wanted.number("F_for_1mm_N");
        assertWithMessage(key).that(1 / perNewton).isWithin(force * rel).of(force);
        assertWithMessage(key)
            .that(1 / perNewton)
            .isWithin(force * rel)
            .of(wanted.number("N_per_mm"));
        double two = wanted.number("a_mm_for_F2N");
        assertWithMessage(key)
            .that(pluck(2, d, 0).amplitudeMm(tension, speaking))
            .isWithin(two * rel)
            .of(two);
      }
    }
  }

  @Test
  @HoldsTo("pluck.envelope")
  void theEnvelopeAgreesWithTheReference() {
    try (Reference reference = Reference.of("pluck.envelope")) {
      Scale scale = new Scale(Length.mm(reference.inputs().number("L_mm")));
      double d = reference.inputs().number("d_mm");
      double a = reference.inputs().number("a_mm");
      double tolerance = reference.tolerance("abs_mm");
      for (String stop : reference.expected().keys()) {
        int k = Integer.parseInt(stop.substring(1));
        double speaking = scale.speakingMm(k);
        Value frets = reference.expected().at(stop);
        for (String fret : frets.keys()) {
          Value wanted = frets.at(fret);
          double u = scale.fretMm(Integer.parseInt(fret)) - scale.fretMm(k);
          String where = reference.because() + " " + stop + " over " + fret;
          assertWithMessage(where).that(u).isWithin(tolerance).of(wanted.number("u_mm"));
          double pushed = pluck(1, d, 0).depthMm(a, speaking, u);
          assertWithMessage(where).that(pushed).isWithin(tolerance).of(wanted.number("pushed"));
          double returned = pluck(1, d, Pluck.Way.PULLED, 0).depthMm(a, speaking, u);
          assertWithMessage(where).that(returned).isWithin(tolerance).of(wanted.number("pulled"));
          for (Pluck.Way way : Pluck.Way.values()) {
            assertWithMessage(where)
                .that(pluck(1, d, way, 1).depthMm(a, speaking, u))
                .isWithin(1e-12)
                .of(Math.max(pushed, returned));
          }
        }
      }
    }
  }

  /**
   * A second way: the wave equation stepped through time. At Courant number one the leap-frog
   * scheme gives d'Alembert's solution at its points without error, so over a whole period the
   * deepest excursion must be the envelope.
   */
  @Test
  void theWaveEquationStaysWithinTheEnvelopeAndReachesIt() {
    int points = 240;
    double speaking = 600;
    for (int at : new int[] {20, 48, 90, 120, 200}) {
      double d = speaking * at / points;
      double[] pushed = new double[points + 1];
      for (int i = 0; i <= points; i++) {
        pushed[i] = Pluck.triangle(speaking, speaking - d, speaking * i / points);
      }
      double[][] deepest = swing(pushed);
      for (int i = 1; i < points; i++) {
        double u = speaking * i / points;
        String where = "stroke at " + d + ", over " + u;
        double down = pluck(1, d, 0).depthMm(1, speaking, u);
        assertWithMessage(where).that(deepest[0][i]).isWithin(1e-9).of(down);
        double back = pluck(1, d, Pluck.Way.PULLED, 0).depthMm(1, speaking, u);
        assertWithMessage(where).that(deepest[1][i]).isWithin(1e-9).of(back);
      }
    }
  }

  /** The largest excursion at every point over a period, to the first side and to the other. */
  private static double[][] swing(double[] shape) {
    int last = shape.length - 1;
    double[] before = shape.clone();
    double[] now = shape.clone();
    for (int i = 1; i < last; i++) {
      now[i] = (shape[i - 1] + shape[i + 1]) / 2; // released at rest
    }
    double[][] most = {shape.clone(), new double[shape.length]};
    for (int step = 0; step <= 2 * last; step++) {
      double[] next = new double[shape.length];
      for (int i = 1; i < last; i++) {
        next[i] = now[i - 1] + now[i + 1] - before[i];
        most[0][i] = Math.max(most[0][i], now[i]);
        most[1][i] = Math.max(most[1][i], -now[i]);
      }
      before = now;
      now = next;
    }
    return most;
  }

  /** The static force of the two slopes beside the apex: F = T (a/d + a/(l - d)). */
  @Test
  void theForceBalancesTheTwoSlopesOfTheTriangle() {
    SplittableRandom random = new SplittableRandom(SEED);
    for (int i = 0; i < 2000; i++) {
      double speaking = 100 + 800 * random.nextDouble();
      double d = speaking * (0.02 + 0.96 * random.nextDouble());
      double tension = 20 + 300 * random.nextDouble();
      double force = 10 * random.nextDouble();
      double a = pluck(force, d, 0).amplitudeMm(Force.newtons(tension), speaking);
      assertWithMessage("seed " + SEED + ", " + i)
          .that(tension * (a / d + a / (speaking - d)))
          .isWithin(1e-9)
          .of(force);
    }
  }

  @Test
  void amplitudeAndDepthScaleAndMirror() {
    SplittableRandom random = new SplittableRandom(SEED);
    for (int i = 0; i < 2000; i++) {
      String where = "seed " + SEED + ", " + i;
      double speaking = 100 + 800 * random.nextDouble();
      double d = speaking * (0.02 + 0.96 * random.nextDouble());
      double u = speaking * random.nextDouble();
      double share = random.nextDouble();
      Force tension = Force.newtons(20 + 300 * random.nextDouble());
      double a = pluck(1, d, share).amplitudeMm(tension, speaking);
      assertWithMessage(where)
          .that(pluck(2, d, share).amplitudeMm(tension, speaking))
          .isWithin(1e-12)
          .of(2 * a);
      assertWithMessage(where)
          .that(pluck(1, speaking - d, share).amplitudeMm(tension, speaking))
          .isWithin(1e-12)
          .of(a);
      assertWithMessage(where)
          .that(pluck(1, 3 * d, share).amplitudeMm(tension, 3 * speaking))
          .isWithin(1e-12)
          .of(3 * a);
      double depth = pluck(1, d, share).depthMm(a, speaking, u);
      assertWithMessage(where)
          .that(pluck(1, d, share).depthMm(2 * a, speaking, u))
          .isWithin(1e-12)
          .of(2 * depth);
      assertWithMessage(where).that(depth).isAtMost(a + 1e-12);
      assertWithMessage(where)
          .that(pluck(1, d, Math.min(1, share + 0.1)).depthMm(a, speaking, u))
          .isAtLeast(depth);
      assertWithMessage(where)
          .that(pluck(1, speaking - d, 1).depthMm(a, speaking, speaking - u))
          .isWithin(1e-9)
          .of(pluck(1, d, 1).depthMm(a, speaking, speaking - u));
    }
  }

  @Test
  void aTriangleIsOneAtItsApexAndNothingAtItsEnds() {
    assertThat(Pluck.triangle(600, 120, 0)).isEqualTo(0.0);
    assertThat(Pluck.triangle(600, 120, 120)).isEqualTo(1.0);
    assertThat(Pluck.triangle(600, 120, 600)).isEqualTo(0.0);
    assertThat(Pluck.triangle(600, 120, 60)).isWithin(1e-12).of(0.5);
    assertThat(Pluck.triangle(600, 120, 360)).isWithin(1e-12).of(0.5);
  }

  /** "Physics of the Electric Guitar", ch. 1.5: 1000 to 2000 N/m at 6 to 10 cm from the bridge. */
  @Test
  void aGuitarStringIsAsStiffAsPublished() {
    Force tension = Force.newtons(70);
    for (double d : new double[] {60, 70, 80}) {
      double newtonsPerMetre = 1000 / pluck(1, d, 0).amplitudeMm(tension, 648);
      assertThat(newtonsPerMetre).isAtLeast(990);
      assertThat(newtonsPerMetre).isAtMost(2000);
    }
  }

  @Test
  void refusesWhatCannotBe() {
    assertThat(assertThrows(NotUnderstoodException.class, () -> pluck(-1, 120, 0)))
        .hasMessageThat()
        .contains("force");
    assertThat(assertThrows(NotUnderstoodException.class, () -> pluck(1, 0, 0)))
        .hasMessageThat()
        .contains("distance from the saddle");
    assertThat(assertThrows(NotUnderstoodException.class, () -> pluck(1, 120, -0.001)))
        .hasMessageThat()
        .contains("between 0 and 1");
    assertThat(assertThrows(NotUnderstoodException.class, () -> pluck(1, 120, 1.001)))
        .hasMessageThat()
        .contains("between 0 and 1");
    assertThrows(NotUnderstoodException.class, () -> pluck(1, 120, Double.NaN));
    assertThat(pluck(0, 0.1, 1).returnShare()).isEqualTo(1.0);
    Force tension = Force.newtons(180);
    assertThat(
            assertThrows(
                NotUnderstoodException.class, () -> pluck(1, 120, 0).amplitudeMm(tension, 120)))
        .hasMessageThat()
        .contains("between the stop and the saddle");
    assertThat(
            assertThrows(
                NotUnderstoodException.class,
                () -> pluck(1, 60, 0).amplitudeMm(Force.newtons(0), 120)))
        .hasMessageThat()
        .contains("tension must be above zero");
    assertThat(pluck(1, 119.999, 0).amplitudeMm(tension, 120)).isGreaterThan(0);
  }
}
