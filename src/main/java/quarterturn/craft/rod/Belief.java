package quarterturn.craft.rod;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import quarterturn.craft.Window;
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
 * <p>In a rest of hours the neck creeps on the way it was turned last, by the share that {@link
 * Creep} gives for its usual exponent, and r becomes less sure by what the other exponents and the
 * weather would do. After a rest of days, and between two sessions, only the rod is still known:
 * {@link Known}, a little wider, and the {@link Doubts} of it. The relief is found anew, since
 * strings, weather or another hand may have moved it.
 */
public final class Belief {
  /** Standard deviation of one gauge reading in millimetres; an estimate. */
  public static final double NOISE_MM = 0.012;

  private static final int MOST_ZOOMS = 8;

  /** Factor by which the assumed noise of a reading shrinks from one weighing to the next. */
  private static final double SHARPER = 3;

  /**
   * Ratio of the chance of a dead rod to that at first, below which the rod counts as seen to
   * answer.
   */
  private static final double LEFT_OF_DOUBT = 0.05;

  private static final double BIN_MM = 0.005;
  private static final double BIN_FROM = -2;
  private static final double BIN_TO = 4;

  private final Known known;
  private final Grid grid;

  private Belief(Known known, Grid grid) {
    this.known = known;
    this.grid = grid;
  }

  /**
   * The belief after a story.
   *
   * @param known before it
   * @param story what happened, oldest first
   */
  public static Belief of(Known known, List<Seen> story) {
    return of(known, story, NOISE_MM);
  }

  /**
   * The belief after a story whose readings have an error of {@code noise} millimetres, above zero.
   */
  static Belief of(Known known, List<Seen> story, double noise) {
    Known before = known;
    Doubts doubts = Doubts.of(known);
    List<Seen> since = new ArrayList<>();
    for (Seen seen : story) {
      if (seen instanceof Seen.Rested rest && rest.anew()) {
        Belief belief = chain(before, doubts, since, noise);
        before = belief.known().rested(rest.hours());
        doubts = Doubts.after(belief, before);
        since.clear();
      } else {
        since.add(seen);
      }
    }
    return chain(before, doubts, since, noise);
  }

  /**
   * The belief after a story without a long rest, weighed again on a closer grid while it knows the
   * response closer than a step. Readings finer than usual are taken as coarser at first, or no
   * case of a wide grid would suit them.
   */
  private static Belief chain(Known known, Doubts doubts, List<Seen> story, double noise) {
    double blur = Math.max(noise, NOISE_MM);
    Grid grid = Grid.of(Cases.of(known, doubts), known.way(), story, blur);
    for (int zoom = 0; zoom < MOST_ZOOMS; zoom++) {
      LogResponse spread = LogResponse.of(grid);
      boolean closer = spread.chance() > 0 && spread.sigma() <= grid.cases().step();
      if (!closer && blur == noise) {
        return new Belief(known, grid);
      }
      double reach = 5 * Math.max(spread.sigma(), grid.cases().step() / 2);
      Cases cases = closer ? Cases.of(known, doubts, spread.middle(), reach) : grid.cases();
      blur = Math.max(noise, blur / SHARPER);
      grid = Grid.of(cases, known.way(), story, blur);
    }
    return new Belief(known, grid);
  }

  /** Every case with a chance worth counting, as it stands before and after {@code turns}. */
  void weigh(double turns, Grid.Weighing weighing) {
    grid.weigh(turns, weighing);
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

  /** The chance that the rod is in {@code state}. */
  double chance(RodState state) {
    double sum = 0;
    for (int c = 0; c < grid.cases().size(); c++) {
      if (grid.cases().state(c) == state) {
        sum += grid.chance(c);
      }
    }
    return sum;
  }

  /** The chance that a turn of this sign (plus tightens) moves nothing. */
  double chanceOfNoAnswer(double turns) {
    double sum = 0;
    for (RodState state : RodState.values()) {
      sum += state.answers(turns) ? 0 : chance(state);
    }
    return sum;
  }

  /**
   * The chance of a working rod, and the mean and standard deviation of its response's logarithm.
   */
  private record LogResponse(double chance, double middle, double sigma) {
    static LogResponse of(Grid grid) {
      double chance = 0;
      double sum = 0;
      double squares = 0;
      for (int c = 0; c < grid.cases().size(); c++) {
        if (grid.cases().state(c) == RodState.WORKS) {
          double w = grid.chance(c);
          double log = Math.log(grid.cases().response(c));
          chance += w;
          sum += w * log;
          squares += w * log * log;
        }
      }
      double middle = chance > 0 ? sum / chance : 0;
      double variance = chance > 0 ? squares / chance - middle * middle : 0;
      return new LogResponse(chance, middle, Math.sqrt(Math.max(0, variance)));
    }
  }

  /** What is worth keeping of this belief for another session. */
  public Known known() {
    LogResponse spread = LogResponse.of(grid);
    if (spread.chance() < 0.5) {
      return known;
    }
    double[] slack = new double[Known.SLACK.size()];
    double deadAtFirst = 0;
    for (int c = 0; c < grid.cases().size(); c++) {
      RodState state = grid.cases().state(c);
      if (state == RodState.WORKS) {
        slack[grid.cases().slackIndex(c)] += grid.chance(c) / spread.chance();
      } else if (state == RodState.DEAD) {
        deadAtFirst += grid.cases().chance(c);
      }
    }
    boolean answered = known.answered() || chance(RodState.DEAD) < LEFT_OF_DOUBT * deadAtFirst;
    return Known.of(
        Math.exp(spread.middle()),
        spread.sigma(),
        Arrays.stream(slack).boxed().toList(),
        grid.way(),
        answered);
  }
}
