package quarterturn.craft.rod;

import quarterturn.unit.Turn;
import quarterturn.unit.Worded;

/**
 * What to do with a neck now, and what is known of it.
 *
 * @param step what to do
 * @param inWindow chance that the relief stands in the window now, or after the turn
 * @param why a sentence or two for a beginner
 * @param known to be kept for another session
 */
public record Decision(Step step, double inWindow, String why, Known known) {
  /** The step to take next with a neck. */
  public sealed interface Step {}

  /**
   * Turn the rod.
   *
   * @param turn plus tightens
   * @param expected where the relief should stand afterwards
   */
  public record TurnRod(Turn turn, Range expected) implements Step {}

  /** Leave it: it stands in the window. */
  public record Leave() implements Step {}

  /** Read the relief again before anything else. */
  public record ReadAgain() implements Step {}

  /** Turn nothing more and hand the instrument over. */
  public record HandOver(Reason reason) implements Step {}

  /** Why an instrument is handed over. */
  public enum Reason implements Worded {
    /** The rod does nothing. */
    NO_RESPONSE(
        "The neck does not answer the rod. Turning harder would break something: hand it to a"
            + " repairer."),
    /** The rod works the other way round. */
    WRONG_WAY(
        "The neck moves the other way round. Why that is has to be found out first: hand it to a"
            + " repairer."),
    /** The rod does nothing more this way. */
    END_OF_TRAVEL(
        "Loosening does nothing more: the rod is fully loose, or does not work. Hand it to a"
            + " repairer."),
    /** The least turn takes the neck from one side of its window to the other. */
    TOO_LIVELY(
        "The smallest turn a hand can make takes this neck across its range. Hand it to a"
            + " repairer."),
    /** The rod stands a full turn from where it was found. */
    LIMIT(
        "The rod stands a full turn from where it was found, which is as far as this program"
            + " goes. Hand it to a repairer.");

    private final String sentence;

    Reason(String sentence) {
      this.sentence = sentence;
    }

    /** The reason in one or two sentences for a beginner. */
    public String sentence() {
      return sentence;
    }
  }
}
