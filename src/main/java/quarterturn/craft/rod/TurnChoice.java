package quarterturn.craft.rod;

import java.util.ArrayList;
import java.util.List;
import quarterturn.craft.Window;
import quarterturn.unit.Turn;

/**
 * The turns that a hand can make towards the window, weighed by what each may be expected to cost.
 *
 * <p>A hand makes a quarter or an eighth of a turn. A sixteenth is open only to a neck that has
 * shown at least {@link BeliefAdvisor#LIVELY_MM} for a quarter turn, where an eighth would take it
 * across the window; of any other neck a sixteenth moves less than leaves can tell.
 *
 * <p>The cost is counted in cycles of turning, settling and reading: the cycle itself; for each
 * case that does not read in the window afterwards as many more cycles as its way to the window
 * takes in quarter turns; and {@code crossing} more where it was taken across the window to the
 * other side. One step ahead is enough, since the next reading changes the belief more than any
 * plan.
 *
 * @param way towards the window: 1 tightens, -1 loosens
 * @param crossing what crossing the window costs, in cycles
 */
record TurnChoice(Belief belief, Window window, int way, double crossing) {
  /** The chance of crossing from which on an eighth counts as taking the neck across. */
  private static final double WOULD_CROSS = 0.15;

  /** How far inside the window a neck should come to lie, in millimetres. */
  private static final double MARGIN_MM = 0.02;

  /** The least response reckoned with, in millimetres, or a dead rod would cost without end. */
  private static final double LEAST_MM = 0.04;

  /** The cheapest of the open turns up to {@code most}; {@link Turn#NONE} where none is. */
  Turn cheapest(Turn most) {
    double best = Double.POSITIVE_INFINITY;
    Turn turn = Turn.NONE;
    for (Turn size : sizes(most)) {
      double cost = cost(way * size.turns());
      if (cost < best - 1e-9) {
        best = cost;
        turn = new Turn(way * size.turns());
      }
    }
    return turn;
  }

  /** The sizes that are open; where an eighth is more than is allowed, what is allowed. */
  private List<Turn> sizes(Turn most) {
    List<Turn> sizes = new ArrayList<>();
    boolean least = most.atLeast(Turn.SIXTEENTH);
    if (least && (!most.atLeast(Turn.EIGHTH) || (lively() && eighthCrosses()))) {
      sizes.add(Turn.SIXTEENTH);
    }
    for (Turn size : List.of(Turn.EIGHTH, Turn.QUARTER)) {
      if (most.atLeast(size)) {
        sizes.add(size);
      }
    }
    return sizes;
  }

  private boolean lively() {
    Known known = belief.known();
    return known.answered() && known.mmPerQuarter() >= BeliefAdvisor.LIVELY_MM;
  }

  private boolean eighthCrosses() {
    return chanceOfCrossing(new Turn(way * Turn.EIGHTH.turns())) > WOULD_CROSS;
  }

  /** The chance that a turn takes the neck beyond the far end of the window. */
  double chanceOfCrossing(Turn turn) {
    double[] sum = {0};
    belief.weigh(
        turn.turns(),
        (chance, before, after, response) ->
            sum[0] += (way > 0 ? after < window.lowMm() : after > window.highMm()) ? chance : 0);
    return sum[0];
  }

  /** What a turn may be expected to cost, in cycles. */
  double cost(double turns) {
    double[] sum = {1};
    belief.weigh(
        turns,
        (chance, before, after, response) -> {
          double misses =
              1
                  - Normal.below((window.highMm() - after) / Belief.NOISE_MM)
                  + Normal.below((window.lowMm() - after) / Belief.NOISE_MM);
          if (misses > 1e-6) {
            sum[0] += chance * misses * more(before, after, response);
          }
        });
    return sum[0];
  }

  /** Expected cycles after a turn, for a case that does not read in the window then. */
  private double more(double before, double after, double response) {
    double above = after - window.highMm();
    double below = window.lowMm() - after;
    double off = Math.max(above, below);
    if (off <= 0) {
      return 1;
    }
    double cycles = Math.max(1, Math.ceil((off + MARGIN_MM) / Math.max(response, LEAST_MM)));
    boolean crossed = above > 0 ? before < window.lowMm() : before > window.highMm();
    return crossed ? cycles + crossing : cycles;
  }
}
