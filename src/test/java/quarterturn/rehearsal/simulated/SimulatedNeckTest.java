package quarterturn.rehearsal.simulated;

import static com.google.common.truth.Truth.assertThat;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.time.Duration;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import quarterturn.craft.rod.Creep;
import quarterturn.procedure.condition.Feel;
import quarterturn.procedure.kind.Which;
import quarterturn.unit.Bracket;
import quarterturn.unit.Turn;

/** What a simulated neck does, against the trade's rules and the creep of the Wood Handbook. */
class SimulatedNeckTest {
  private static final double CLOSE = 1e-9;

  /** A neck in still air, read without error. */
  private static SimulatedNeck neck(double relief, double response, double slack, NeckFault fault) {
    NeckTraits traits =
        new NeckTraits(
            relief, response, slack, Creep.USUAL, 0.1, 0, 0, -0.02, Feelers.USUAL, fault);
    return new SimulatedNeck(traits, new SplittableRandom(1));
  }

  @Test
  void tighteningLowersTheReliefAndLooseningRaisesIt() {
    SimulatedNeck neck = neck(0.6, 0.2, 0, NeckFault.NONE);
    neck.turn(Turn.QUARTER);
    assertThat(neck.relief()).isWithin(CLOSE).of(0.4);
    neck.turn(Turn.EIGHTH.opposite());
    assertThat(neck.relief()).isWithin(CLOSE).of(0.5);
    assertThat(neck.moves()).isEqualTo(2);
    assertThat(neck.mostNet()).isEqualTo(Turn.QUARTER);
  }

  @Test
  void slackIsLostOnceOnEachChangeOfWay() {
    SimulatedNeck neck = neck(0.6, 0.2, 0.05, NeckFault.NONE);
    neck.turn(Turn.QUARTER);
    assertThat(neck.relief()).isWithin(CLOSE).of(0.4);
    neck.turn(new Turn(-0.03));
    assertThat(neck.relief()).isWithin(CLOSE).of(0.4);
    neck.turn(new Turn(-0.07));
    assertThat(neck.relief()).isWithin(CLOSE).of(0.4 + 4 * 0.2 * 0.05);
    neck.turn(neck.turnTo(0.3));
    assertThat(neck.relief()).isWithin(CLOSE).of(0.3);
  }

  /**
   * After a day it has crept by 0.1738 of what it did at once, after a week by 0.2828: the power
   * law of Creep for the usual exponent, after the Wood Handbook, FPL-GTR-190, chapter 5.
   */
  @Test
  void itCreepsOnAfterATurn() {
    SimulatedNeck neck = neck(0.8, 0.2, 0, NeckFault.NONE);
    neck.turn(Turn.QUARTER);
    neck.pass(Duration.ofDays(1));
    assertThat(neck.relief()).isWithin(1e-5).of(0.6 - 0.2 * 0.1738387);
    neck.pass(Duration.ofDays(6));
    assertThat(neck.relief()).isWithin(1e-5).of(0.6 - 0.2 * 0.28276196);
  }

  @Test
  void slackStringsLetItGoBackUntilTheyAreTuned() {
    SimulatedNeck neck = neck(0.62, 0.2, 0, NeckFault.NONE);
    assertThat(neck.read(Which.LOWEST)).isEqualTo(new Bracket(0.60, 0.65));
    neck.detune();
    assertThat(neck.read(Which.LOWEST)).isEqualTo(new Bracket(0.50, 0.55));
    neck.tune();
    assertThat(neck.read(Which.HIGHEST)).isEqualTo(new Bracket(0.60, 0.65));
    assertThat(neck.relief()).isWithin(CLOSE).of(0.62);
  }

  @Test
  void theClimateMovesItTheMoreTheLongerItLasts() {
    double day = spreadAfter(Duration.ofDays(1));
    double month = spreadAfter(Duration.ofDays(25));
    assertThat(day).isWithin(0.002).of(0.01);
    assertThat(month).isWithin(0.01).of(0.05);
  }

  private static double spreadAfter(Duration time) {
    double squares = 0;
    for (int seed = 0; seed < 500; seed++) {
      SimulatedNeck neck =
          new SimulatedNeck(NeckTraits.of(0.5, 0.2, 0, NeckFault.NONE), new SplittableRandom(seed));
      neck.pass(time);
      squares += Math.pow(neck.relief() - 0.5, 2);
    }
    return Math.sqrt(squares / 500);
  }

  @Test
  void faultsDoWhatTheyAreCalled() {
    assertThat(turned(NeckFault.DEAD, 0.25)).isWithin(CLOSE).of(0.6);
    assertThat(turned(NeckFault.REVERSED, 0.25)).isWithin(CLOSE).of(0.8);
    assertThat(turned(NeckFault.JAMMED, 0.25)).isWithin(CLOSE).of(0.6);
    assertThat(turned(NeckFault.FULLY_TIGHT, 0.25)).isWithin(CLOSE).of(0.6);
    assertThat(turned(NeckFault.FULLY_TIGHT, -0.25)).isWithin(CLOSE).of(0.8);
    assertThat(turned(NeckFault.FULLY_LOOSE, -0.25)).isWithin(CLOSE).of(0.6);
    assertThat(turned(NeckFault.FULLY_LOOSE, 0.25)).isWithin(CLOSE).of(0.4);
    assertThat(turned(NeckFault.STIFF, 0.25)).isWithin(CLOSE).of(0.4);
  }

  private static double turned(NeckFault fault, double turns) {
    SimulatedNeck neck = neck(0.6, 0.2, 0, fault);
    neck.turn(new Turn(turns));
    return neck.relief();
  }

  /** A nut that was backed off comes back to where it was found before it bears again. */
  @Test
  void aLooseRodHasToBeTakenUpAgain() {
    SimulatedNeck neck = neck(0.6, 0.2, 0, NeckFault.FULLY_LOOSE);
    neck.turn(Turn.QUARTER.opposite());
    neck.turn(Turn.QUARTER);
    assertThat(neck.relief()).isWithin(CLOSE).of(0.6);
    neck.turn(Turn.EIGHTH);
    assertThat(neck.relief()).isWithin(CLOSE).of(0.5);
  }

  @Test
  void theFingersTellSomeFaults() {
    assertThat(neck(0.6, 0.2, 0, NeckFault.JAMMED).feel(Turn.EIGHTH)).isEqualTo(Feel.JAMMED);
    assertThat(neck(0.6, 0.2, 0, NeckFault.STRIPPED).feel(Turn.EIGHTH)).isEqualTo(Feel.SLIPPED);
    assertThat(neck(0.6, 0.2, 0, NeckFault.STIFF).feel(Turn.EIGHTH)).isEqualTo(Feel.STIFF);
    assertThat(neck(0.6, 0.2, 0, NeckFault.DEAD).feel(Turn.EIGHTH)).isEqualTo(Feel.SMOOTH);
    SimulatedNeck loose = neck(0.6, 0.2, 0, NeckFault.FULLY_LOOSE);
    assertThat(loose.feel(Turn.EIGHTH.opposite())).isEqualTo(Feel.FREE);
    assertThat(loose.feel(Turn.EIGHTH)).isEqualTo(Feel.SMOOTH);
    assertThat(neck(0.6, 0.2, 0, NeckFault.FULLY_TIGHT).feel(Turn.EIGHTH)).isEqualTo(Feel.STIFF);
  }

  @Test
  void theSameSeedGivesTheSameReadings() {
    for (NeckFault fault : NeckFault.values()) {
      assertThat(history(fault)).isEqualTo(history(fault));
    }
  }

  private static String history(NeckFault fault) {
    SplittableRandom random = new SplittableRandom(7);
    SimulatedNeck neck = new SimulatedNeck(Draw.neck(fault, random), random);
    StringBuilder all = new StringBuilder();
    for (int i = 0; i < 20; i++) {
      neck.turn(new Turn(i % 2 == 0 ? 0.125 : -0.0625));
      neck.pass(Duration.ofHours(3));
      all.append(neck.read(Which.LOWEST)).append(neck.relief());
    }
    return all.toString();
  }

  @Test
  void refusesNecksThatCannotBe() {
    assertThrows(IllegalArgumentException.class, () -> NeckTraits.of(0.5, 0, 0, NeckFault.NONE));
    assertThrows(IllegalArgumentException.class, () -> NeckTraits.of(0.5, 0.2, -1, NeckFault.NONE));
  }
}
