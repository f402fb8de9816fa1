package quarterturn.craft.rod;

import quarterturn.craft.Window;
import quarterturn.unit.Bracket;
import quarterturn.unit.Decimals;
import quarterturn.unit.Turn;

/** The sentences in which {@link BeliefAdvisor} gives its reasons to a beginner. */
final class AdviceWords {
  private AdviceWords() {}

  static String of(Bracket reading, Belief belief, RodHistory course, Turn turn) {
    boolean tighten = turn.turns() > 0;
    String gap =
        reading.noGap()
            ? "No gap shows, so the neck is straight or bowed back."
            : "The gap is " + (tighten ? "larger" : "smaller") + " than it should be.";
    String way = tighten ? " Tightening makes it smaller." : " Loosening makes it larger.";
    if (course.moves() > 0 && belief.chanceOfNoAnswer(course.way()) > BeliefAdvisor.MAY_BE) {
      return gap + way + " The neck was not seen to answer its last turn.";
    }
    Known known = belief.known();
    String source =
        !known.answered()
            ? " How far this neck moves is not known yet; most move about %s mm for a quarter turn."
            : " Going by its turns so far, this neck moves about %s mm for a quarter turn.";
    return gap + way + source.formatted(Decimals.print(known.mmPerQuarter(), 2));
  }

  /**
   * The figures behind an advice, for a technician: the response to a quarter turn, its range nine
   * times in ten, the chance of the window, and the doubt that is left in the rod.
   */
  static String numbers(Belief belief, Window window, Turn turn) {
    Known known = belief.known();
    Range range = known.nineInTen();
    String response =
        "A quarter turn: %s mm (%s to %s). In range after %s: %s %%."
            .formatted(
                Decimals.print(known.mmPerQuarter(), 2),
                Decimals.print(range.lowMm(), 2),
                Decimals.print(range.highMm(), 2),
                turn.size(),
                Decimals.print(100 * belief.chanceIn(window, turn), 0));
    double silent = 100 * belief.chanceOfNoAnswer(turn.turns());
    return silent < 1
        ? response
        : response + " Rod without effect: " + Decimals.print(silent, 0) + " %.";
  }
}
