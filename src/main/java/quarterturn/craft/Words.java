package quarterturn.craft;

import quarterturn.unit.Bracket;
import quarterturn.unit.Decimals;
import quarterturn.unit.Turn;

/** What {@link BeliefAdvisor} says, for a beginner. */
final class Words {
  private Words() {}

  static String of(Bracket reading, Belief belief, Course course, Turn turn) {
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
        course.moves() == 0 && !known.answered()
            ? " How far this neck moves is not known yet; most move about %s mm for a quarter turn."
            : " Going by its turns so far, this neck moves about %s mm for a quarter turn.";
    return gap + way + source.formatted(Decimals.print(known.mmPerQuarter(), 2));
  }

  static String of(Decision.Reason reason) {
    return switch (reason) {
      case NO_RESPONSE ->
          "The neck does not answer the rod. Turning harder would break something: hand it to a"
              + " repairer.";
      case WRONG_WAY ->
          "The neck moves the other way round. Why that is has to be found out first: hand it to a"
              + " repairer.";
      case END_OF_TRAVEL ->
          "Loosening does nothing more: the rod is fully loose, or does not work. Hand it to a"
              + " repairer.";
      case LIMIT ->
          "The rod stands a full turn from where it was found, which is as far as this program"
              + " goes. Hand it to a repairer.";
    };
  }
}
