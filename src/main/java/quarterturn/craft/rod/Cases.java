package quarterturn.craft.rod;

/**
 * The cases a belief weighs: a state of the rod, a response and a slack, each with its chance
 * before anything was read. Responses of a working rod stand in even steps of their logarithm.
 */
final class Cases {
  private static final int FINE = 31;
  private static final int COARSE = 11;
  private static final double REACH = 3.2;
  private static final int ALL = FINE * Known.SLACK.size() + 1 + 3 * COARSE;

  private final RodState[] states = new RodState[ALL];
  private final double[] responses = new double[ALL];
  private final int[] slacks = new int[ALL];
  private final double[] chances = new double[ALL];
  private final double step;
  private int size;

  private Cases(double step) {
    this.step = step;
  }

  /** All cases of a neck. */
  static Cases of(Known known, Doubts doubts) {
    return of(known, doubts, Math.log(known.mmPerQuarter()), REACH * known.sigma());
  }

  /**
   * All cases, the responses of a working rod close around one place.
   *
   * @param middle natural logarithm of the response in the middle
   * @param reach of the logarithm to either side
   */
  static Cases of(Known known, Doubts doubts, double middle, double reach) {
    Cases cases = new Cases(2 * reach / (FINE - 1));
    LogSteps fine = new LogSteps(known, middle, reach, FINE);
    for (int slack = 0; slack < Known.SLACK.size(); slack++) {
      cases.spread(RodState.WORKS, fine, slack, doubts.working() * known.slack().get(slack));
    }
    LogSteps coarse =
        new LogSteps(known, Math.log(known.mmPerQuarter()), REACH * known.sigma(), COARSE);
    cases.add(RodState.DEAD, 0, 0, doubts.dead());
    cases.spread(RodState.REVERSED, coarse, 0, doubts.reversed());
    cases.spread(RodState.FULLY_LOOSE, coarse, 0, doubts.loose());
    cases.spread(RodState.FULLY_TIGHT, coarse, 0, doubts.tight());
    return cases;
  }

  /**
   * Even steps of a response's logarithm, weighed by the lognormal distribution of what is known.
   */
  private record LogSteps(Known known, double middle, double reach, int steps) {
    double log(int i) {
      return middle + reach * (2.0 * i / (steps - 1) - 1);
    }

    double weight(int i) {
      double z = (log(i) - Math.log(known.mmPerQuarter())) / known.sigma();
      return Math.exp(-z * z / 2);
    }
  }

  private void spread(RodState state, LogSteps spread, int slack, double all) {
    double sum = 0;
    for (int i = 0; i < spread.steps(); i++) {
      sum += spread.weight(i);
    }
    for (int i = 0; i < spread.steps(); i++) {
      double response = Math.exp(spread.log(i));
      add(
          state,
          state == RodState.REVERSED ? -response : response,
          slack,
          all * spread.weight(i) / sum);
    }
  }

  private void add(RodState state, double response, int slack, double chance) {
    states[size] = state;
    responses[size] = response;
    slacks[size] = slack;
    chances[size] = chance;
    size++;
  }

  int size() {
    return size;
  }

  RodState state(int c) {
    return states[c];
  }

  /** Millimetres of relief that a quarter turn of tightening takes away. */
  double response(int c) {
    return responses[c];
  }

  /** Index of a case's slack in {@link Known#SLACK}. */
  int slackIndex(int c) {
    return slacks[c];
  }

  /** Slack of a case, in turns. */
  double slack(int c) {
    return Known.SLACK.get(slacks[c]);
  }

  double chance(int c) {
    return chances[c];
  }

  /** Distance of neighbouring responses of a working rod, as a natural logarithm. */
  double step() {
    return step;
  }
}
