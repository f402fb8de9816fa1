package quarterturn.craft;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.apache.commons.math3.optim.PointValuePair;
import org.apache.commons.math3.optim.linear.LinearConstraint;
import org.apache.commons.math3.optim.linear.LinearConstraintSet;
import org.apache.commons.math3.optim.linear.LinearObjectiveFunction;
import org.apache.commons.math3.optim.linear.NonNegativeConstraint;
import org.apache.commons.math3.optim.linear.Relationship;
import org.apache.commons.math3.optim.linear.SimplexSolver;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.junit.jupiter.api.Test;
import quarterturn.unit.Force;
import quarterturn.unit.Length;
import quarterturn.unit.NotUnderstoodException;

/** The relief that allows the lowest action. The instruments are invented. */
class LowestActionTest {
  private static final long SEED = 20_270_303;
  private static final Scale BASS = new Scale(Length.inches(34));
  private static final int JOINT = 17;
  private static final Held HELD = Held.at(JOINT, 7);
  private static final Length NUT = Length.mm(0.5);
  private static final Force TENSION = Force.newtons(180);
  private static final int LAST = 20;

  private static Pluck stroke(double share) {
    return new Pluck(Force.newtons(1.742), Length.mm(120), Pluck.Way.PUSHED, share);
  }

  private static LowestAction lowest(Pluck pluck) {
    return LowestAction.of(BASS, JOINT, HELD, NUT, TENSION, pluck, LAST);
  }

  private static ContactMap map(Pluck pluck, double relief, double action) {
    Neck neck = Neck.uniform(BASS, JOINT, Length.mm(relief), HELD);
    StringLine line = StringLine.withAction(neck, NUT, 12, Length.mm(action));
    return ContactMap.of(line, TENSION, pluck, LAST);
  }

  @Test
  void withNothingReturningAStraightNeckIsBest() {
    LowestAction lowest = lowest(stroke(0));
    assertThat(lowest.relief().mm()).isWithin(1e-9).of(0);
    assertThat(lowest.action12().mm()).isWithin(1e-9).of(lowest.action12Straight().mm());
    // Every pair of frets asks for the same saddle then: F d / T.
    double saddle = 1.742 * 120 / 180;
    assertThat(lowest.action12().mm()).isWithin(1e-9).of((0.5 + saddle) / 2);
  }

  @Test
  void withAllReturningAClearReliefIsBest() {
    LowestAction lowest = lowest(stroke(1));
    assertThat(lowest.relief().mm()).isGreaterThan(0.3);
    assertThat(lowest.action12Straight().mm() - lowest.action12().mm()).isGreaterThan(0.5);
  }

  @Test
  void theMoreReturnsTheMoreReliefPays() {
    double before = -1e-9;
    for (double share = 0; share <= 1.0001; share += 0.1) {
      double relief = lowest(stroke(Math.min(1, share))).relief().mm();
      assertThat(relief).isAtLeast(before - 1e-9);
      before = relief;
    }
  }

  @Test
  void atTheLowestActionTheStringJustClearsAndNoReliefAllowsLess() {
    for (double share : new double[] {0, 0.2, 0.5, 0.8, 1}) {
      Pluck pluck = stroke(share);
      LowestAction lowest = lowest(pluck);
      double relief = lowest.relief().mm();
      double action = lowest.action12().mm();
      assertThat(map(pluck, relief, action).leastMm()).isWithin(1e-9).of(0);
      assertThat(map(pluck, 0, lowest.action12Straight().mm()).leastMm()).isWithin(1e-9).of(0);
      for (double other = -0.3; other <= 1.2; other += 0.01) {
        assertWithMessage("share " + share + ", relief " + other)
            .that(map(pluck, other, action - 1e-6).leastMm())
            .isLessThan(0);
      }
    }
  }

  /**
   * A second way: the same question as a linear program in curvature and action, its constraints
   * taken from two contact maps each, solved by a simplex from a numeric library.
   */
  @Test
  void aLinearProgramFindsTheSame() {
    SplittableRandom random = new SplittableRandom(SEED);
    for (int i = 0; i < 40; i++) {
      Pluck pluck =
          new Pluck(
              Force.newtons(0.5 + 2 * random.nextDouble()),
              Length.mm(40 + 120 * random.nextDouble()),
              Pluck.Way.values()[i % 2],
              random.nextDouble());
      LowestAction lowest = lowest(pluck);
      PointValuePair best = program(pluck);
      String where = "seed " + SEED + ", " + i;
      assertWithMessage(where).that(lowest.action12().mm()).isWithin(1e-6).of(best.getValue());
      // More reliefs than one may allow it; the least is given, and a smaller one allows less.
      double relief = lowest.relief().mm();
      assertWithMessage(where).that(relief).isAtMost(best.getPoint()[0] + 1e-4);
      double action = lowest.action12().mm();
      assertWithMessage(where).that(map(pluck, relief, action + 1e-6).leastMm()).isAtLeast(0);
      if (relief > 1e-9) {
        assertWithMessage(where).that(map(pluck, relief - 1e-3, action).leastMm()).isLessThan(0);
      }
    }
  }

  private static PointValuePair program(Pluck pluck) {
    ContactMap at00 = map(pluck, 0, 0);
    ContactMap at10 = map(pluck, 1, 0);
    ContactMap at01 = map(pluck, 0, 1);
    List<LinearConstraint> constraints = new ArrayList<>();
    for (int k = 0; k < LAST; k++) {
      for (int n = k + 1; n <= LAST; n++) {
        double none = at00.marginMm(k, n);
        double perRelief = at10.marginMm(k, n) - none;
        double perAction = at01.marginMm(k, n) - none;
        constraints.add(
            new LinearConstraint(new double[] {perRelief, perAction}, Relationship.GEQ, -none));
      }
    }
    return new SimplexSolver()
        .optimize(
            new LinearObjectiveFunction(new double[] {0, 1}, 0),
            new LinearConstraintSet(constraints),
            GoalType.MINIMIZE,
            new NonNegativeConstraint(false));
  }

  @Test
  void allLengthsScaleTogetherAndForcesGoByTheirRatio() {
    for (double share : new double[] {0.3, 1}) {
      LowestAction one = lowest(stroke(share));
      LowestAction twice =
          LowestAction.of(
              new Scale(Length.inches(68)),
              JOINT,
              HELD,
              Length.mm(1),
              TENSION,
              new Pluck(Force.newtons(1.742), Length.mm(240), Pluck.Way.PUSHED, share),
              LAST);
      assertThat(twice.relief().mm()).isWithin(1e-9).of(2 * one.relief().mm());
      assertThat(twice.action12().mm()).isWithin(1e-9).of(2 * one.action12().mm());
      LowestAction harder =
          LowestAction.of(
              BASS,
              JOINT,
              HELD,
              NUT,
              Force.newtons(360),
              new Pluck(Force.newtons(3.484), Length.mm(120), Pluck.Way.PUSHED, share),
              LAST);
      assertThat(harder.relief().mm()).isWithin(1e-9).of(one.relief().mm());
      assertThat(harder.action12().mm()).isWithin(1e-9).of(one.action12().mm());
    }
  }

  /** Stopped at fret k over fret 12 - k, relief does not matter while the action at 12 is kept. */
  @Test
  void ofFretsThatAddUpToTwelveTheClearanceDoesNotHangOnTheRelief() {
    Pluck pluck = stroke(0.8);
    for (int k = 1; k < 6; k++) {
      assertThat(map(pluck, 0.6, 2).marginMm(k, 12 - k))
          .isWithin(1e-9)
          .of(map(pluck, 0, 2).marginMm(k, 12 - k));
      assertThat(
              Math.abs(
                  map(pluck, 0.6, 2).marginMm(k, 13 - k) - map(pluck, 0, 2).marginMm(k, 13 - k)))
          .isGreaterThan(1e-4);
    }
  }

  @Test
  void theNutGoesIntoTheActionByHalf() {
    LowestAction low = lowest(stroke(1));
    LowestAction high =
        LowestAction.of(BASS, JOINT, HELD, Length.mm(0.9), TENSION, stroke(1), LAST);
    assertThat(high.relief().mm()).isWithin(1e-9).of(low.relief().mm());
    assertThat(high.action12().mm()).isWithin(1e-9).of(low.action12().mm() + 0.2);
  }

  @Test
  void refusesWhatCannotBe() {
    Pluck near = new Pluck(Force.newtons(1.742), Length.mm(60), Pluck.Way.PUSHED, 1);
    assertThat(
            assertThrows(
                NotUnderstoodException.class,
                () -> LowestAction.of(BASS, JOINT, HELD, NUT, TENSION, stroke(1), 1)))
        .hasMessageThat()
        .contains("last fret must lie between 2 and 36, not 1");
    assertThrows(
        NotUnderstoodException.class,
        () -> LowestAction.of(BASS, JOINT, HELD, NUT, TENSION, stroke(1), 37));
    assertThat(
            assertThrows(
                NotUnderstoodException.class,
                () -> LowestAction.of(BASS, JOINT, HELD, NUT, TENSION, stroke(1), 2)))
        .hasMessageThat()
        .contains("the last fret must be higher");
    assertThat(LowestAction.of(BASS, JOINT, HELD, NUT, TENSION, near, 36).action12().mm())
        .isGreaterThan(0);
  }

  /** However absurd the player, an answer is found; invented necks of every kind. */
  @Test
  void anAnswerIsFoundForEveryNeckAndStroke() {
    SplittableRandom random = new SplittableRandom(SEED);
    for (int i = 0; i < 3000; i++) {
      Scale scale = new Scale(Length.mm(300 + 900 * random.nextDouble()));
      int last = 17 + random.nextInt(8);
      int joint = 12 + random.nextInt(last - 11);
      Pluck pluck =
          new Pluck(
              Force.newtons(Math.pow(10, 6 * random.nextDouble() - 2)),
              Length.mm(scale.speakingMm(last) * random.nextDouble() + 0.01),
              Pluck.Way.values()[i % 2],
              random.nextInt(4) / 3.0);
      Force tension = Force.newtons(20 + 300 * random.nextDouble());
      LowestAction lowest =
          LowestAction.of(scale, joint, Held.at(joint, 7), NUT, tension, pluck, last);
      String where = "seed " + SEED + ", " + i;
      assertWithMessage(where).that(lowest.relief().mm()).isAtLeast(-1e-9);
      assertWithMessage(where)
          .that(lowest.action12().mm())
          .isAtMost(lowest.action12Straight().mm() * (1 + 1e-9));
      Neck neck = Neck.uniform(scale, joint, lowest.relief(), Held.at(joint, 7));
      StringLine line = StringLine.withAction(neck, NUT, 12, lowest.action12());
      double least = ContactMap.of(line, tension, pluck, last).leastMm();
      assertWithMessage(where)
          .that(least)
          .isWithin(1e-8 * Math.max(1, lowest.action12().mm()))
          .of(0);
    }
  }
}
