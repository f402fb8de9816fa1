package quarterturn.craft;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Random;
import org.apache.commons.math3.analysis.integration.IterativeLegendreGaussIntegrator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import quarterturn.unit.Length;
import quarterturn.unit.NotUnderstoodException;

class NeckTest {
  private static final Scale BASS = new Scale(Length.inches(34));

  private static Neck any(Random random, Held held) {
    Scale scale = new Scale(Length.mm(500 + 500 * random.nextDouble()));
    int joint = held.readAt() + 1 + random.nextInt(12);
    Length relief = Length.mm((random.nextDouble() - 0.3) * 1.2);
    return Neck.uniform(scale, joint, relief, held);
  }

  private static Held anyHold(Random random) {
    int low = random.nextInt(3);
    int readAt = low + 2 + random.nextInt(8);
    return new Held(low, readAt + 1 + random.nextInt(14), readAt);
  }

  @Test
  void theReliefGivenIsReadBack() {
    long seed = 11;
    Random random = new Random(seed);
    for (int i = 0; i < 1000; i++) {
      Held held = anyHold(random);
      Scale scale = new Scale(Length.mm(500 + 500 * random.nextDouble()));
      int joint = held.readAt() + 1 + random.nextInt(12);
      Length relief = Length.mm((random.nextDouble() - 0.3) * 1.2);
      assertWithMessage("seed %s, round %s", seed, i)
          .that(Neck.uniform(scale, joint, relief, held).relief(held).mm())
          .isWithin(1e-9)
          .of(relief.mm());
    }
  }

  @Test
  void readingsUnderTwoConventionsConvertBackAndForth() {
    long seed = 12;
    Random random = new Random(seed);
    for (int i = 0; i < 1000; i++) {
      Held mine = anyHold(random);
      Neck neck = any(random, mine);
      Held theirs = anyHold(random);
      if (theirs.readAt() >= neck.joint()) {
        theirs = new Held(1, neck.joint() + 1, 2);
      }
      Length told = neck.relief(theirs);
      Neck again = Neck.uniform(neck.scale(), neck.joint(), told, theirs);
      assertWithMessage("seed %s, round %s", seed, i)
          .that(again.relief(mine).mm())
          .isWithin(1e-8)
          .of(neck.relief(mine).mm());
    }
  }

  @Test
  void mirroredReliefGivesMirroredFretTops() {
    long seed = 13;
    Random random = new Random(seed);
    for (int i = 0; i < 300; i++) {
      Held held = anyHold(random);
      Neck neck = any(random, held);
      Neck mirrored =
          Neck.uniform(neck.scale(), neck.joint(), Length.mm(-neck.relief(held).mm()), held);
      for (int n = 0; n <= 24; n++) {
        assertWithMessage("seed %s, round %s, fret %s", seed, i, n)
            .that(mirrored.fretTopMm(n))
            .isWithin(1e-9)
            .of(-neck.fretTopMm(n));
      }
    }
  }

  /** Scale and relief twice as large make the same picture, twice as large. */
  @Test
  void scalingAllLengthsScalesAllLengths() {
    long seed = 14;
    Random random = new Random(seed);
    for (int i = 0; i < 300; i++) {
      Held held = anyHold(random);
      double factor = 0.3 + 3 * random.nextDouble();
      int joint = held.readAt() + 1 + random.nextInt(12);
      Scale other = new Scale(Length.mm(BASS.mm() * factor));
      Neck one = Neck.uniform(BASS, joint, Length.mm(0.3), held);
      Neck large = Neck.uniform(other, joint, Length.mm(0.3 * factor), held);
      for (int n = 0; n <= 24; n++) {
        assertWithMessage("seed %s, round %s, fret %s", seed, i, n)
            .that(large.fretTopMm(n))
            .isWithin(1e-9)
            .of(one.fretTopMm(n) * factor);
      }
    }
  }

  /** The second way: kappa by the closed form, for a hold at 1 and the joint. */
  @Test
  void heldAtTheJointTheCurvatureHasAClosedForm() {
    for (int joint = 9; joint <= 24; joint++) {
      double x1 = BASS.fretMm(1);
      double xm = BASS.fretMm(7);
      double xj = BASS.fretMm(joint);
      Neck neck = Neck.uniform(BASS, joint, Length.mm(0.3), Held.at(joint, 7));
      assertThat(neck.curvature()).isWithin(1e-15).of(2 * 0.3 / ((xj - xm) * (xm - x1)));
    }
  }

  /** The gap under a chord, reckoned a second way: a beam solved on a grid. */
  @Test
  void theGapUnderAChordAgreesWithANumericBeam() {
    Neck neck = Neck.uniform(BASS, 17, Length.mm(0.3), Held.at(17, 7));
    double joint = BASS.fretMm(17);
    NumericBeam beam = NumericBeam.bent(joint, 540, x -> neck.curvature());
    assertThat(beam.gap(BASS.fretMm(1), BASS.fretMm(7), joint)).isWithin(2e-5).of(0.3);
    for (int high = 9; high <= 24; high++) {
      for (int readAt = 2; readAt < high; readAt++) {
        assertWithMessage("held at %s, read at %s", high, readAt)
            .that(neck.relief(Held.at(high, readAt)).mm())
            .isWithin(2e-5)
            .of(beam.gap(BASS.fretMm(1), BASS.fretMm(readAt), BASS.fretMm(high)));
      }
    }
  }

  @Test
  void aStraightNeckShowsNoGapAnywhere() {
    Neck straight = Neck.straight(BASS, 17);
    assertThat(straight.curvature()).isEqualTo(0.0);
    assertThat(straight.joint()).isEqualTo(17);
    for (int n = 0; n <= 24; n++) {
      assertThat(straight.fretTopMm(n)).isEqualTo(0.0);
    }
    assertThat(straight.relief(Held.at(17, 7)).mm()).isEqualTo(0.0);
    assertThat(straight.bentBy(1e-5).fretTopMm(0)).isGreaterThan(1.0);
  }

  @ParameterizedTest
  @ValueSource(ints = {-3, 0, 1, 37})
  void aJointIsAFretBeyondTheFirst(int joint) {
    NotUnderstoodException e =
        assertThrows(NotUnderstoodException.class, () -> Neck.straight(BASS, joint));
    assertThat(e)
        .hasMessageThat()
        .isEqualTo("a joint fret must lie between 2 and 36, not " + joint);
  }

  @Test
  void theJointsAtTheEndsAreTaken() {
    assertThat(Neck.straight(BASS, 2).joint()).isEqualTo(2);
    assertThat(Neck.straight(BASS, 36).joint()).isEqualTo(36);
  }

  @ParameterizedTest
  @ValueSource(ints = {2, 6, 7})
  void aReliefReadAtOrBeyondTheJointIsRefused(int joint) {
    NotUnderstoodException e =
        assertThrows(
            NotUnderstoodException.class,
            () -> Neck.uniform(BASS, joint, Length.mm(0.3), Held.at(17, 7)));
    assertThat(e)
        .hasMessageThat()
        .isEqualTo(
            "a relief read over fret 7 shows nothing of a bow that ends at the joint, fret "
                + joint);
    NotUnderstoodException gain =
        assertThrows(
            NotUnderstoodException.class,
            () -> StringLine.actionPerRelief(Neck.straight(BASS, joint), 12, Held.at(17, 7)));
    assertThat(gain).hasMessageThat().isEqualTo(e.getMessage());
  }

  @Test
  void aJointJustBeyondTheFretReadIsEnough() {
    Neck neck = Neck.uniform(BASS, 8, Length.mm(0.3), Held.at(17, 7));
    assertThat(neck.relief(Held.at(17, 7)).mm()).isWithin(1e-12).of(0.3);
  }

  @Test
  void theBoardIsFlatFromTheJointOn() {
    Neck neck = Neck.straight(BASS, 17).bentBy(1);
    double joint = BASS.fretMm(17);
    assertThat(neck.heightMm(joint)).isEqualTo(0.0);
    assertThat(neck.heightMm(joint + 0.001)).isEqualTo(0.0);
    assertThat(neck.heightMm(900)).isEqualTo(0.0);
    assertThat(neck.heightMm(joint - 1)).isWithin(1e-9).of(0.5);
  }

  /** Between nut and joint the board is the integral of the curvature times its arm. */
  @Test
  void theBoardIsTheIntegralOfItsCurvature() {
    IterativeLegendreGaussIntegrator sum = new IterativeLegendreGaussIntegrator(5, 1e-12, 1e-10);
    for (int joint = 9; joint <= 24; joint++) {
      Neck neck = Neck.straight(BASS, joint).bentBy(1e-5);
      double end = BASS.fretMm(joint);
      for (double x = 0; x < end; x += 41.3) {
        double from = x;
        assertWithMessage("joint %s, at %s", joint, x)
            .that(neck.heightMm(x))
            .isWithin(1e-9)
            .of(sum.integrate(100_000, t -> 1e-5 * (t - from), from, end));
      }
    }
  }

  @Test
  void aCurvatureIsFinite() {
    Neck neck = Neck.straight(BASS, 17);
    for (double no : new double[] {Double.NaN, Double.POSITIVE_INFINITY}) {
      IllegalArgumentException e =
          assertThrows(IllegalArgumentException.class, () -> neck.bentBy(no));
      assertThat(e).hasMessageThat().isEqualTo("a curvature must be finite");
    }
  }
}
