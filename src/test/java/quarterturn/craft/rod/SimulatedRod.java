package quarterturn.craft.rod;

import java.util.SplittableRandom;
import quarterturn.unit.Bracket;

/**
 * A neck as the model of {@link Belief} has it, for tests: relief, response, slack and what is
 * wrong with its rod. Read with leaves of 0.05 mm up to 1.00 mm.
 */
final class SimulatedRod {
  static final double LEAF_MM = 0.05;
  static final double THICKEST_MM = 1.0;

  private final RodState state;
  private final double response;
  private final double slack;
  private final double noise;
  private final SplittableRandom random;
  private double relief;
  private double left;
  private int way;

  SimulatedRod(
      RodState state,
      double relief,
      double response,
      double slack,
      double noise,
      SplittableRandom random) {
    this.state = state;
    this.relief = relief;
    this.response = state == RodState.REVERSED ? -response : response;
    this.slack = slack;
    this.noise = noise;
    this.random = random;
  }

  double relief() {
    return relief;
  }

  /** The turn that takes this neck to a relief, slack made up for, without limit or steps. */
  double turnTo(double wanted) {
    double turns = (relief - wanted) / response / 4;
    return turns + Math.copySign(slackBefore(turns), turns);
  }

  void turn(double turns) {
    double before = slackBefore(turns);
    double holds = Math.max(0, Math.abs(turns) - before);
    left = Math.max(0, before - Math.abs(turns));
    way = turns > 0 ? 1 : -1;
    if (state.answers(turns)) {
      relief -= 4 * response * Math.copySign(holds, turns);
    }
  }

  private double slackBefore(double turns) {
    return way * turns < 0 ? slack : left;
  }

  Bracket read() {
    double gap = relief + noise * random.nextGaussian();
    if (gap < LEAF_MM) {
      return Bracket.lifts(LEAF_MM);
    }
    if (gap >= THICKEST_MM) {
      return Bracket.passes(THICKEST_MM);
    }
    long leaf = (long) Math.floor(gap / LEAF_MM + 1e-9);
    return new Bracket(leaf * LEAF_MM, (leaf + 1) * LEAF_MM);
  }
}
