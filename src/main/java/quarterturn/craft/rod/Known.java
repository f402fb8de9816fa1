package quarterturn.craft.rod;

import java.util.List;

/**
 * What is known of a neck's rod before a session's first reading: enough to carry from one session
 * to the next.
 *
 * @param mmPerQuarter median response, millimetres of settled relief for a quarter turn
 * @param sigma standard deviation of its natural logarithm
 * @param slack chances of the slack lost on reversing, one for each of {@link #SLACK}
 * @param way of the last turn: 1 tightened, -1 loosened, 0 not known
 * @param answered whether the neck was ever seen to answer as it should
 */
public record Known(
    double mmPerQuarter, double sigma, List<Double> slack, int way, boolean answered) {
  /** The amounts of slack that are considered, in turns. */
  public static final List<Double> SLACK = List.of(0.0, 0.03, 0.07);

  /** Chances of each {@link #SLACK} before a rod was ever turned; estimates. */
  private static final List<Double> USUAL_SLACK = List.of(0.6, 0.2, 0.2);

  /** What a whole season's weather adds to the spread of the response; an estimate. */
  private static final double SEASON = 0.1;

  private static final double SEASON_HOURS = 90 * 24;

  /** Half the width of a normal distribution's middle nine tenths, in standard deviations. */
  private static final double NINE_IN_TEN = 1.645;

  /** The least {@link #sigma} of any neck. */
  private static final double LEAST_SIGMA = 0.02;

  public Known {
    slack = List.copyOf(slack);
    if (!(mmPerQuarter > 0 && mmPerQuarter < 10)) {
      throw new IllegalArgumentException("a response must lie above 0 and below 10 mm");
    }
    if (!(sigma >= LEAST_SIGMA && sigma <= 2)) {
      throw new IllegalArgumentException(
          "the spread of a response must lie between " + LEAST_SIGMA + " and 2");
    }
    double sum = slack.stream().mapToDouble(Double::doubleValue).sum();
    if (slack.size() != SLACK.size()
        || slack.stream().anyMatch(chance -> !(chance >= 0))
        || Math.abs(sum - 1) > 1e-3) {
      throw new IllegalArgumentException(
          "slack must be " + SLACK.size() + " chances that add up to 1");
    }
    if (way < -1 || way > 1) {
      throw new IllegalArgumentException("the last way must be -1, 0 or 1");
    }
  }

  /** What is known of a rod of which nothing but the kind of neck is known. */
  public static Known of(Prior prior) {
    return new Known(prior.mmPerQuarter(), Prior.SIGMA, USUAL_SLACK, 0, false);
  }

  /** What a belief comes to, with a spread of at least {@link #LEAST_SIGMA}. */
  static Known of(
      double mmPerQuarter, double sigma, List<Double> slack, int way, boolean answered) {
    return new Known(mmPerQuarter, Math.min(2, Math.max(LEAST_SIGMA, sigma)), slack, way, answered);
  }

  /**
   * What is known of this neck after a rest. The less is known of its creep, the less sure is how
   * far a turn takes it in the end; and damp or dry wood bends differently.
   */
  public Known rested(double hours) {
    double weather = SEASON * Math.sqrt(Math.min(1, Math.max(0, hours) / SEASON_HOURS));
    double wider = Math.hypot(sigma, Math.hypot(Creep.doubt(hours), weather));
    return new Known(mmPerQuarter, Math.min(2, wider), slack, way, answered);
  }

  /** The range of the response to a quarter turn nine times in ten, in millimetres. */
  public Range nineInTen() {
    double reach = Math.exp(NINE_IN_TEN * sigma);
    return new Range(mmPerQuarter / reach, mmPerQuarter * reach);
  }
}
