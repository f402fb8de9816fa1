package quarterturn.report;

import java.util.List;
import quarterturn.craft.rod.Known;
import quarterturn.unit.Decimals;

/** What is known of how a neck answers its rod. */
final class NeckWords {
  /** Half of what a normal distribution holds nine times in ten, in standard deviations. */
  private static final double NINE_IN_TEN = 1.645;

  private NeckWords() {}

  static String of(Known known, List<History.Move> moves) {
    double reach = Math.exp(NINE_IN_TEN * known.sigma());
    String middle = Decimals.print(known.mmPerQuarter(), 2);
    String range =
        "nine times in ten between "
            + Decimals.print(known.mmPerQuarter() / reach, 2)
            + " and "
            + Decimals.print(known.mmPerQuarter() * reach, 2)
            + " mm.";
    if (!known.answered()) {
      String why =
          moves.isEmpty()
              ? "The rod was never turned, so how this neck answers is not known yet."
              : "How this neck answers is not known yet: no turn's effect was plainly seen.";
      return why + " What to expect of a quarter turn: about " + middle + " mm, " + range;
    }
    return "A quarter turn moves this neck about "
        + middle
        + " mm, "
        + range
        + slack(known)
        + " It was turned "
        + (moves.size() == 1 ? "once" : moves.size() + " times")
        + way(known)
        + ".";
  }

  private static String slack(Known known) {
    int likely = 0;
    for (int i = 1; i < known.slack().size(); i++) {
      likely = known.slack().get(i) > known.slack().get(likely) ? i : likely;
    }
    double turns = Known.SLACK.get(likely);
    return turns == 0
        ? " Slack on a change of way: most likely none."
        : " Slack on a change of way: most likely " + Decimals.print(turns, 2) + " turn.";
  }

  private static String way(Known known) {
    return switch (known.way()) {
      case 1 -> ", last tightened";
      case -1 -> ", last loosened";
      default -> "";
    };
  }
}
