package quarterturn.report;

import java.util.List;
import quarterturn.craft.rod.Known;
import quarterturn.craft.rod.Range;
import quarterturn.unit.Decimals;

/** Words for how a neck answers its rod. */
final class NeckWords {
  private NeckWords() {}

  static String of(Known known, List<ReadingHistory.Move> moves) {
    Range range = known.nineInTen();
    String middle = Decimals.print(known.mmPerQuarter(), 2);
    String between =
        "nine times in ten between "
            + Decimals.print(range.lowMm(), 2)
            + " and "
            + Decimals.print(range.highMm(), 2)
            + " mm.";
    if (!known.answered()) {
      String why =
          moves.isEmpty()
              ? "The rod was never turned, so how this neck answers is not known yet."
              : "How this neck answers is not known yet: no turn's effect was plainly seen.";
      return why + " What to expect of a quarter turn: about " + middle + " mm, " + between;
    }
    return "A quarter turn moves this neck about "
        + middle
        + " mm, "
        + between
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
