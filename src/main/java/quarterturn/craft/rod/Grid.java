package quarterturn.craft.rod;

import java.util.Arrays;
import java.util.List;
import quarterturn.unit.Bracket;

/**
 * The chances of every case and every first relief, as one story leaves them: the sums behind
 * {@link Belief}, whose docstring has the mathematics.
 */
final class Grid {
  private static final double MISREAD = 0.001;
  private static final double SAYS_ANYTHING = 0.05;

  /** Lowest relief that is expected, in millimetres; an estimate. */
  private static final double LOWEST_MM = -0.5;

  private static final double HIGHEST_MM = 1.5;

  /** The chance below which a case is given up. */
  private static final double FORGOTTEN = 1e-14;

  /** The chance below which a case is left out where turns are weighed. */
  private static final double WORTH_WEIGHING = 1e-5;

  /** Hours from a turn to its reading, as the procedures have it. */
  private static final double READ_AFTER_HOURS = 1 / 6.0;

  /** Standard deviation in millimetres of what a day's weather does to the relief; an estimate. */
  private static final double WEATHER_MM = 0.01;

  private final Cases cases;
  private final double noise;
  private final double[] moved;
  private final double[] left;
  private final double[] sinceRest;
  private final double[] chances;
  private int way;
  private double[] weights = new double[0];
  private double first;
  private double step;
  private int steps;

  private Grid(Cases cases, int way, double noise) {
    this.cases = cases;
    this.noise = noise;
    this.way = way;
    this.moved = new double[cases.size()];
    this.left = new double[cases.size()];
    this.sinceRest = new double[cases.size()];
    this.chances = new double[cases.size()];
    for (int c = 0; c < chances.length; c++) {
      chances[c] = cases.chance(c);
    }
  }

  /**
   * Weighs a story without a long rest.
   *
   * @param way of the last turn before it, 1 tightened, -1 loosened, 0 not known
   * @param noise standard deviation of a reading in millimetres
   */
  static Grid of(Cases cases, int way, List<Seen> story, double noise) {
    Grid grid = new Grid(cases, way, noise);
    for (Seen seen : story) {
      if (seen instanceof Seen.Read read) {
        grid.read(read.relief());
      } else if (seen instanceof Seen.Turned turned) {
        grid.turn(turned.turn().turns());
      } else if (seen instanceof Seen.Rested rest) {
        grid.rest(rest.hours());
      }
    }
    return grid;
  }

  Cases cases() {
    return cases;
  }

  /** Way of the last turn: 1 tightened, -1 loosened, 0 not known. */
  int way() {
    return way;
  }

  /** The chance of a case, whatever the relief. */
  double chance(int c) {
    return chances[c];
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
    Arrays.fill(sinceRest, 0);
    for (int c = 0; c < cases.size(); c++) {
      Arrays.fill(weights, c * steps, (c + 1) * steps, cases.chance(c) / steps);
    }
  }

  private void turn(double turns) {
    if (turns == 0) {
      return;
    }
    for (int c = 0; c < cases.size(); c++) {
      double change = 4 * cases.response(c) * takesHold(c, turns);
      moved[c] += change;
      sinceRest[c] += change;
      left[c] = Math.max(0, slackBefore(c, turns) - Math.abs(turns));
    }
    way = turns > 0 ? 1 : -1;
  }

  /** Lets each case creep on the way of the last turns, and widens where it may stand. */
  private void rest(double hours) {
    if (weights.length == 0 || hours == 0) {
      return;
    }
    double first = 1 + Creep.USUAL.share(READ_AFTER_HOURS);
    double later = (Creep.USUAL.share(hours) - Creep.USUAL.share(READ_AFTER_HOURS)) / first;
    double weather = WEATHER_MM * Math.sqrt(hours / 24);
    for (int c = 0; c < cases.size(); c++) {
      blur(c, Math.hypot(sinceRest[c] * Creep.doubt(hours) / first, weather));
      moved[c] += sinceRest[c] * Math.max(0, later);
      sinceRest[c] = 0;
    }
  }

  /** Spreads one case's chances by a normal distribution, in millimetres. */
  private void blur(int c, double sigma) {
    int reach = (int) Math.ceil(3 * sigma / step);
    double[] kernel = new double[reach + 1];
    double all = 0;
    for (int k = 0; k <= reach; k++) {
      kernel[k] = Math.exp(-0.5 * Math.pow(k * step / sigma, 2));
      all += k == 0 ? kernel[k] : 2 * kernel[k];
    }
    double[] blurred = new double[steps];
    for (int i = 0; i < steps; i++) {
      double w = weights[c * steps + i];
      if (w > 0) {
        for (int k = -reach; k <= reach; k++) {
          // What would leave the grid stays at its end.
          int to = Math.max(0, Math.min(steps - 1, i + k));
          blurred[to] += w * kernel[Math.abs(k)] / all;
        }
      }
    }
    System.arraycopy(blurred, 0, weights, c * steps, steps);
  }

  /** The slack that lies before a turn of this way. */
  private double slackBefore(int c, double turns) {
    return way != 0 && way * turns < 0 ? cases.slack(c) : left[c];
  }

  /** The part of a turn that takes hold, in turns; plus tightens. */
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

  /** Takes each case with the relief before and after a turn. */
  interface Weighing {
    /**
     * Takes one case.
     *
     * @param chance of it
     * @param before relief in millimetres now
     * @param after relief in millimetres after the turn
     * @param response millimetres for a quarter turn, without sign; 0 of a dead rod
     */
    void take(double chance, double before, double after, double response);
  }

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
}
