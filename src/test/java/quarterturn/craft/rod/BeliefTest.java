package quarterturn.craft.rod;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import quarterturn.craft.Window;
import quarterturn.unit.Bracket;
import quarterturn.unit.Turn;

/** What readings and turns leave to believe. */
@Tag("slow")
class BeliefTest {
  private static final double A_WEEK = 7 * 24;
  private static final long SEED = 20_270_312;
  private static final Window WINDOW = new Window(0.25, 0.40);
  private static final Known BASS = Known.of(Prior.BASS);

  private static Seen read(double low, double high) {
    return new Seen.Read(new Bracket(low, high));
  }

  private static Seen turned(double turns) {
    return new Seen.Turned(new Turn(turns));
  }

  /** A second way: necks drawn at random from the same model, each weighed by what was read. */
  @Test
  void necksDrawnAtRandomSayTheSame() {
    List<List<Seen>> stories =
        List.of(
            List.of(read(0.60, 0.65)),
            List.of(read(0.60, 0.65), turned(0.125), read(0.50, 0.55)),
            List.of(
                read(0.60, 0.65), turned(0.125), read(0.60, 0.65), turned(0.25), read(0.55, 0.60)),
            List.of(
                read(0.15, 0.20),
                turned(-0.125),
                read(0.25, 0.30),
                turned(0.125),
                read(0.20, 0.25)),
            List.of(
                new Seen.Read(Bracket.lifts(0.05)),
                turned(-0.125),
                new Seen.Read(Bracket.lifts(0.05))));
    for (List<Seen> story : stories) {
      Belief belief = Belief.of(BASS, story);
      Drawn drawn = Drawn.of(story);
      String where = "seed " + SEED + ", " + story;
      assertWithMessage(where)
          .that(belief.chanceIn(WINDOW, Turn.NONE))
          .isWithin(0.02)
          .of(drawn.inWindow());
      assertWithMessage(where)
          .that(belief.chanceIn(WINDOW, Turn.QUARTER))
          .isWithin(0.02)
          .of(drawn.inWindowAfterQuarter());
      for (RodState state : RodState.values()) {
        assertWithMessage(where + " " + state)
            .that(belief.chance(state))
            .isWithin(0.02)
            .of(drawn.states()[state.ordinal()]);
      }
    }
  }

  /** Many necks, their weights added up. */
  private record Drawn(double inWindow, double inWindowAfterQuarter, double[] states) {
    private static final int NECKS = 400_000;
    private static final NormalDistribution ERROR = new NormalDistribution(0, Belief.NOISE_MM);

    static Drawn of(List<Seen> story) {
      SplittableRandom random = new SplittableRandom(SEED);
      Bracket first = ((Seen.Read) story.get(0)).relief();
      double low = first.noGap() ? -0.5 : first.lowMm() - 5 * Belief.NOISE_MM;
      double high = first.beyondGauge() ? 1.5 : first.highMm() + 5 * Belief.NOISE_MM;
      double all = 0;
      double in = 0;
      double after = 0;
      double[] states = new double[RodState.values().length];
      for (int i = 0; i < NECKS; i++) {
        double pick = random.nextDouble();
        RodState state =
            pick < 0.02
                ? RodState.DEAD
                : pick < 0.03
                    ? RodState.REVERSED
                    : pick < 0.05
                        ? RodState.FULLY_LOOSE
                        : pick < 0.07 ? RodState.FULLY_TIGHT : RodState.WORKS;
        double any = random.nextDouble();
        double slack = any < 0.6 ? 0 : any < 0.8 ? Known.SLACK.get(1) : Known.SLACK.get(2);
        SimulatedRod neck =
            new SimulatedRod(
                state,
                low + (high - low) * random.nextDouble(),
                0.22 * Math.exp(0.5 * random.nextGaussian()),
                state == RodState.WORKS ? slack : 0,
                0,
                random);
        double weight = 1;
        for (Seen seen : story) {
          if (seen instanceof Seen.Turned turned) {
            neck.turn(turned.turn().turns());
          } else if (seen instanceof Seen.Read read) {
            double says =
                ERROR.cumulativeProbability(read.relief().highMm() - neck.relief())
                    - ERROR.cumulativeProbability(read.relief().lowMm() - neck.relief());
            weight *= 0.999 * says + 0.001 * 0.05;
          }
        }
        all += weight;
        in += inside(neck) ? weight : 0;
        states[state.ordinal()] += weight;
        neck.turn(0.25);
        after += inside(neck) ? weight : 0;
      }
      for (int i = 0; i < states.length; i++) {
        states[i] /= all;
      }
      return new Drawn(in / all, after / all, states);
    }

    private static boolean inside(SimulatedRod neck) {
      return neck.relief() >= WINDOW.lowMm() && neck.relief() <= WINDOW.highMm();
    }
  }

  @Test
  void aNeckReadWithoutErrorIsLearnedExactly() {
    for (double response : new double[] {0.07, 0.19, 0.41}) {
      double relief = 1.3;
      List<Seen> story = new ArrayList<>();
      story.add(read(relief - 0.0005, relief + 0.0005));
      for (double turns : new double[] {0.125, 0.25, 0.25}) {
        relief -= 4 * turns * response;
        story.add(turned(turns));
        story.add(read(relief - 0.0005, relief + 0.0005));
      }
      Known known = Belief.of(BASS, story, 0.0005).known();
      assertThat(known.mmPerQuarter()).isWithin(0.005 * response).of(response);
      assertThat(known.sigma()).isAtMost(0.02);
      assertThat(known.answered()).isTrue();
    }
  }

  @Test
  void anExpectationHoldsNineTimesInTen() {
    SplittableRandom random = new SplittableRandom(SEED);
    int held = 0;
    int all = 600;
    for (int i = 0; i < all; i++) {
      SimulatedRod neck =
          new SimulatedRod(
              RodState.WORKS,
              0.55 + 0.3 * random.nextDouble(),
              0.22 * Math.exp(0.5 * random.nextGaussian()),
              0,
              Belief.NOISE_MM,
              random.split());
      List<Seen> story = List.of(new Seen.Read(neck.read()));
      Range range = Belief.of(BASS, story).expect(Turn.EIGHTH);
      neck.turn(0.125);
      held += neck.relief() >= range.lowMm() && neck.relief() <= range.highMm() ? 1 : 0;
    }
    assertThat((double) held / all).isAtLeast(0.86);
    assertThat((double) held / all).isAtMost(0.97);
  }

  @Test
  void whatIsKnownCarriesOverALittleWider() {
    List<Seen> story =
        List.of(
            read(0.60, 0.65), turned(0.125), read(0.50, 0.55), turned(0.1875), read(0.30, 0.35));
    Known known = Belief.of(BASS, story).known();
    assertThat(known.sigma()).isLessThan(BASS.sigma());
    assertThat(known.way()).isEqualTo(1);
    Known rested = known.rested(A_WEEK);
    assertThat(rested.sigma()).isGreaterThan(known.sigma());
    assertThat(rested.mmPerQuarter()).isEqualTo(known.mmPerQuarter());
    List<Seen> longer = new ArrayList<>(story);
    longer.add(new Seen.Rested(A_WEEK));
    longer.add(read(0.45, 0.50));
    Belief one = Belief.of(BASS, longer);
    Belief two = Belief.of(rested, List.of(read(0.45, 0.50)));
    assertThat(one.chanceIn(WINDOW, Turn.EIGHTH))
        .isWithin(1e-9)
        .of(two.chanceIn(WINDOW, Turn.EIGHTH));
  }

  /** The mean and the standard deviation of the relief, in millimetres. */
  private static double[] relief(Belief belief) {
    double[] sums = new double[3];
    belief.weigh(
        0,
        (chance, before, after, response) -> {
          sums[0] += chance;
          sums[1] += chance * before;
          sums[2] += chance * before * before;
        });
    double mean = sums[1] / sums[0];
    return new double[] {mean, Math.sqrt(sums[2] / sums[0] - mean * mean)};
  }

  /**
   * Over a day a neck creeps on by (0.1738 - 0.0502) / 1.0502 = 0.118 of what a reading after ten
   * minutes showed: the power law of Creep, after the Wood Handbook, FPL-GTR-190, chapter 5.
   */
  @Test
  void inADaysRestTheNeckCreepsOnAndIsKnownLessWell() {
    List<Seen> story = new ArrayList<>(List.of(read(0.80, 0.81), turned(0.25), read(0.40, 0.41)));
    double[] before = relief(Belief.of(BASS, story));
    story.add(new Seen.Rested(24));
    double[] after = relief(Belief.of(BASS, story));
    assertThat(before[0] - after[0]).isWithin(0.004).of(0.118 * 0.40);
    assertThat(after[1]).isGreaterThan(1.5 * before[1]);
    story.set(story.size() - 1, new Seen.Rested(0));
    assertThat(relief(Belief.of(BASS, story))).isEqualTo(before);
  }

  @Test
  void aRestOfDaysLeavesOnlyTheRodKnown() {
    List<Seen> story = new ArrayList<>(List.of(read(0.60, 0.65), turned(0.125), read(0.50, 0.55)));
    story.add(new Seen.Rested(A_WEEK));
    story.add(read(0.95, 1.00));
    double[] relief = relief(Belief.of(BASS, story));
    assertThat(relief[0]).isWithin(0.02).of(0.975);
    Known kept = Belief.of(BASS, story).known();
    assertThat(kept.answered()).isTrue();
    assertThat(kept.sigma()).isLessThan(BASS.sigma());
  }

  @Test
  void aRestIsNeverShorterThanNothing() {
    assertThrows(IllegalArgumentException.class, () -> new Seen.Rested(-1));
    assertThrows(IllegalArgumentException.class, () -> new Seen.Rested(Double.NaN));
  }

  @Test
  void refusesKnowledgeThatCannotBe() {
    List<Double> slack = BASS.slack();
    assertThrows(IllegalArgumentException.class, () -> new Known(0, 0.5, slack, 0, false));
    assertThrows(IllegalArgumentException.class, () -> new Known(0.2, 0.001, slack, 0, false));
    assertThrows(IllegalArgumentException.class, () -> new Known(0.2, 3, slack, 0, false));
    assertThrows(IllegalArgumentException.class, () -> new Known(0.2, 0.5, List.of(1.0), 0, false));
    assertThrows(
        IllegalArgumentException.class,
        () -> new Known(0.2, 0.5, List.of(0.5, 0.1, 0.1), 0, false));
    assertThrows(IllegalArgumentException.class, () -> new Known(0.2, 0.5, slack, 2, false));
  }
}
