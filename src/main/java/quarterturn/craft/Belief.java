package quarterturn.craft;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import quarterturn.unit.Bracket;
import quarterturn.unit.Turn;

/**
 * What a neck's readings and turns leave to believe of its relief and its rod.
 *
 * <p>The model. Relief r in mm moves by {@code -4 g e} when the rod is tightened by e turns that
 * take hold: g is the response in mm for a quarter turn, lognormal by {@link Known}. On a change of
 * way the first turns up to the slack are lost. The rod may also be dead, reversed, fully loose or
 * fully tight ({@link RodState}). A reading between two leaves says that r plus a normal error of
 * {@link #NOISE_MM} lay between them, open where the string touches or the thickest leaf passes;
 * one in a thousand says nothing. So with chances w of the cases c = (state, g, slack) and of the
 * first relief r0, all independent at first and r0 even over its range,
 *
 * <pre>
 *   w(c, r0)  is multiplied by  (1 - m) [ F((high - r) / s) - F((low - r) / s) ] + m u
 * </pre>
 *
 * <p>for every reading, with {@code r = r0 - moved(c)}, F the normal distribution, s the error, m
 * the chance of a misreading and u what one then says. That is Bayes' rule on a grid, exact but for
 * the grid's steps: r0 in steps below s, g in even steps of its logarithm. Once the readings know g
 * closer than a step, the grid is set anew around it and the story weighed again.
 *
 * <p>After a rest only {@link Known} is kept, a little wider, and the relief is found anew. The
 * order of creep and weather within a day is below the error of a reading.
 */
public final class Belief {
  /** Standard deviation of one gauge reading in millimetres; an estimate. */
  public static final double NOISE_MM = 0.012;

  private static final double MISREAD = 0.001;
  private static final double SAYS_ANYTHING = 0.05;

  /** No relief beyond these is expected; an estimate. */
  private static final double LOWEST_MM = -0.5;

  private static final double HIGHEST_MM = 1.5;

  private static final int MOST_ZOOMS = 8;

  /** How much sharper a reading is taken from one weighing to the next. */
  private static final double SHARPER = 3;

  /** A chance so small that the case is given up. */
  private static final double FORGOTTEN = 1e-14;

  private final Known known;
  private final Cases cases;
  private final double noise;
  private final double[] moved;
  private final double[] left;
  private final double[] chances;
  private int way;
  private double[] weights = new double[0];
  private double first;
  private double step;
  private int steps;

  private Belief(Known known, Cases cases, double noise) {
    this.known = known;
    this.cases = cases;
    this.noise = noise;
    this.way = known.way();
    this.moved = new double[cases.size()];
    this.left = new double[cases.size()];
    this.chances = new double[cases.size()];
    for (int c = 0; c < chances.length; c++) {
      chances[c] = cases.chance(c);
    }
  }

  /**
   * What a story leaves to believe.
   *
   * @param known before it
   * @param story what happened, oldest first
   */
  public static Belief of(Known known, List<Seen> story) {
    return of(known, story, NOISE_MM);
  }

  /** The same for gauges with another error, in millimetres, above zero. */
  static Belief of(Known known, List<Seen> story, double noise) {
    Known before = known;
    List<Seen> since = new ArrayList<>();
    for (Seen seen : story) {
      if (seen instanceof Seen.Rested) {
        before = chain(before, since, noise).known().rested();
        since.clear();
      } else {
        since.add(seen);
      }
    }
    return chain(before, since, noise);
  }

  /**
   * A story without a rest, weighed again on a closer grid while it knows more than a step.
   * Readings finer than usual are taken as coarser at first, or no case of a wide grid would suit
   * them.
   */
  private static Belief chain(Known known, List<Seen> story, double noise) {
    double blur = Math.max(noise, NOISE_MM);
    Belief belief = weigh(known, Cases.of(known), story, blur);
    for (int zoom = 0; zoom < MOST_ZOOMS; zoom++) {
      Spread spread = belief.spread();
      boolean closer = spread.chance() > 0 && spread.sigma() <= belief.cases.step();
      if (!closer && blur == noise) {
        return belief;
      }
      double reach = 5 * Math.max(spread.sigma(), belief.cases.step() / 2);
      Cases cases = closer ? Cases.of(known, spread.middle(), reach) : belief.cases;
      blur = Math.max(noise, blur / SHARPER);
      belief = weigh(known, cases, story, blur);
    }
    return belief;
  }

  private static Belief weigh(Known known, Cases cases, List<Seen> story, double noise) {
    Belief belief = new Belief(known, cases, noise);
    for (Seen seen : story) {
      if (seen instanceof Seen.Read read) {
        belief.read(read.relief());
      } else if (seen instanceof Seen.Turned turned) {
        belief.turn(turned.turn().turns());
      }
    }
    return belief;
  }

  private void read(Bracket bracket) {
    if (weights.length == 0) {
      begin(bracket);
    }
    double sum = 0;
    for (int c = 0; c < cases.size(); c++) {
      for (int i = 0; i < steps; i++) {
        double before = weights[c * steps + i];
        if (before == 0) {
          continue;
        }
        double relief = relief(c, i);
        double says =
            Normal.below((bracket.highMm() - relief) / noise)
                - Normal.below((bracket.lowMm() - relief) / noise);
        double w = before * ((1 - MISREAD) * says + MISREAD * SAYS_ANYTHING);
        weights[c * steps + i] = w;
        sum += w;
      }
    }
    for (int c = 0; c < cases.size(); c++) {
      double all = 0;
      for (int i = c * steps; i < (c + 1) * steps; i++) {
        double w = weights[i] / sum;
        weights[i] = w < FORGOTTEN ? 0 : w;
        all += weights[i];
      }
      chances[c] = all;
    }
  }

  /** Sets the first relief's grid out, wide enough for the first reading. */
  private void begin(Bracket bracket) {
    double room = 10 * noise;
    double from = bracket.lowMm() - room / 2;
    double to = bracket.highMm() + room / 2;
    double low = Math.max(from, Math.min(LOWEST_MM, to - room));
    double reach = Math.min(to, Math.max(HIGHEST_MM, low + room)) - low;
    steps = (int) Math.ceil(reach / noise) + 1;
    step = reach / (steps - 1);
    first = low;
    weights = new double[cases.size() * steps];
    Arrays.fill(moved, 0);
    for (int c = 0; c < cases.size(); c++) {
      Arrays.fill(weights, c * steps, (c + 1) * steps, cases.chance(c) / steps);
    }
  }

  private void turn(double turns) {
    if (turns == 0) {
      return;
    }
    for (int c = 0; c < cases.size(); c++) {
      moved[c] += 4 * cases.response(c) * takesHold(c, turns);
      left[c] = Math.max(0, slackBefore(c, turns) - Math.abs(turns));
    }
    way = turns > 0 ? 1 : -1;
  }

  /** The slack that lies before a turn of this way. */
  private double slackBefore(int c, double turns) {
    return way != 0 && way * turns < 0 ? cases.slack(c) : left[c];
  }

  /** What of a turn takes hold, plus tightens. */
  private double takesHold(int c, double turns) {
    if (!cases.state(c).answers(turns)) {
      return 0;
    }
    double rest = Math.max(0, Math.abs(turns) - slackBefore(c, turns));
    return Math.copySign(rest, turns);
  }

  private double relief(int c, int i) {
    return first + i * step - moved[c];
  }

  /** Whether a reading was taken in since the last rest. */
  public boolean hasRead() {
    return weights.length > 0;
  }

  /** Takes in where the relief may stand after a turn. */
  interface Weighing {
    /**
     * One case.
     *
     * @param chance of it
     * @param before relief in millimetres now
     * @param after relief in millimetres after the turn
     * @param response millimetres for a quarter turn, without sign; 0 of a dead rod
     */
    void take(double chance, double before, double after, double response);
  }

  /** Cases below this are left out where turns are weighed. */
  private static final double WORTH_WEIGHING = 1e-5;

  /** Every case with a chance worth counting, as it stands before and after {@code turns}. */
  void weigh(double turns, Weighing weighing) {
    for (int c = 0; c < cases.size(); c++) {
      if (chances[c] < WORTH_WEIGHING) {
        continue;
      }
      double change = turns == 0 ? 0 : 4 * cases.response(c) * takesHold(c, turns);
      double response = Math.abs(cases.response(c));
      for (int i = 0; i < steps; i++) {
        double chance = weights[c * steps + i];
        if (chance > 0) {
          double before = relief(c, i);
          weighing.take(chance, before, before - change, response);
        }
      }
    }
  }

  /** The chance that the relief stands in the window after a turn. */
  public double chanceIn(Window window, Turn turn) {
    double[] sum = {0};
    weigh(
        turn.turns(),
        (chance, before, after, response) -> {
          if (after >= window.lowMm() && after <= window.highMm()) {
            sum[0] += chance;
          }
        });
    return sum[0];
  }

  /** Where the relief stands after a turn, nine times in ten; minus infinity where it may touch. */
  public Range expect(Turn turn) {
    int bins = (int) Math.ceil((BIN_TO - BIN_FROM) / BIN_MM);
    double[] mass = new double[bins];
    weigh(
        turn.turns(),
        (chance, before, after, response) -> {
          int bin = (int) Math.floor((after - BIN_FROM) / BIN_MM);
          mass[Math.max(0, Math.min(bins - 1, bin))] += chance;
        });
    double low = BIN_FROM + BIN_MM * quantile(mass, 0.05);
    double high = BIN_FROM + BIN_MM * (quantile(mass, 0.95) + 1);
    return new Range(low <= 0 ? Double.NEGATIVE_INFINITY : low, Math.max(0, high));
  }

  private static final double BIN_MM = 0.005;
  private static final double BIN_FROM = -2;
  private static final double BIN_TO = 4;

  private static int quantile(double[] mass, double share) {
    double sum = 0;
    for (int i = 0; i < mass.length; i++) {
      sum += mass[i];
      if (sum >= share) {
        return i;
      }
    }
    return mass.length - 1;
  }

  /** The chance that the rod is so. */
  double chance(RodState state) {
    double sum = 0;
    for (int c = 0; c < cases.size(); c++) {
      if (cases.state(c) == state) {
        sum += chances[c];
      }
    }
    return sum;
  }

  /** The chance that a turn of this way does nothing. */
  double chanceOfNoAnswer(double turns) {
    double sum = 0;
    for (RodState state : RodState.values()) {
      sum += state.answers(turns) ? 0 : chance(state);
    }
    return sum;
  }

  /** Logarithm of a working rod's response. */
  private record Spread(double chance, double middle, double sigma) {}

  private Spread spread() {
    double chance = 0;
    double sum = 0;
    double squares = 0;
    for (int c = 0; c < cases.size(); c++) {
      if (cases.state(c) == RodState.WORKS) {
        double w = chances[c];
        double log = Math.log(cases.response(c));
        chance += w;
        sum += w * log;
        squares += w * log * log;
      }
    }
    double middle = chance > 0 ? sum / chance : 0;
    double variance = chance > 0 ? squares / chance - middle * middle : 0;
    return new Spread(chance, middle, Math.sqrt(Math.max(0, variance)));
  }

  /** What is worth keeping of it for another session. */
  public Known known() {
    Spread spread = spread();
    if (spread.chance() < 0.5) {
      return known;
    }
    List<Double> slack = new ArrayList<>();
    for (int s = 0; s < Known.SLACK.size(); s++) {
      double sum = 0;
      for (int c = 0; c < cases.size(); c++) {
        if (cases.state(c) == RodState.WORKS && cases.slackIndex(c) == s) {
          sum += chances[c];
        }
      }
      slack.add(sum / spread.chance());
    }
    boolean answered =
        known.answered() || chance(RodState.DEAD) < LEFT_OF_DOUBT * cases.chance(firstDead());
    return Known.of(Math.exp(spread.middle()), spread.sigma(), slack, way, answered);
  }

  /**
   * A rod counts as seen to answer once being dead is a hundred times less likely than at first.
   */
  private static final double LEFT_OF_DOUBT = 0.01;

  private int firstDead() {
    for (int c = 0; c < cases.size(); c++) {
      if (cases.state(c) == RodState.DEAD) {
        return c;
      }
    }
    throw new IllegalStateException("a rod may always be dead");
  }
}
