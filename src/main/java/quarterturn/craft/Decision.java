package quarterturn.craft;

import quarterturn.unit.Turn;

/**
 * What to do with a neck now, and what is known of it.
 *
 * @param step what to do
 * @param inWindow chance that the relief stands in the window now, or after the turn
 * @param why a sentence or two for a beginner
 * @param known to be kept for another session
 */
public record Decision(Step step, double inWindow, String why, Known known) {
  /** What to do. */
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
  public enum Reason {
    /** The rod does nothing. */
    NO_RESPONSE("no-response"),
    /** The rod works the other way round. */
    WRONG_WAY("wrong-way"),
    /** The rod does nothing more this way. */
    END_OF_TRAVEL("end-of-travel"),
    /** The rod stands a full turn from where it was found. */
    LIMIT("limit");

    private final String word;

    Reason(String word) {
      this.word = word;
    }

    public String word() {
      return word;
    }
  }
}
