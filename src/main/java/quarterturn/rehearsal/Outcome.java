package quarterturn.rehearsal;

import org.jspecify.annotations.Nullable;
import quarterturn.procedure.InWindow;
import quarterturn.rehearsal.simulated.FirstGap;
import quarterturn.session.Prompt;
import quarterturn.unit.Turn;

/**
 * The outcome of a rehearsed neck.
 *
 * @param id the session's outcome ("in-window", "limit"), or {@link #UNSETTLED}
 * @param gap the result of the first reading of the lowest string
 * @param handedOver whether it went to a repairer
 * @param moves how often the rod was turned
 * @param crossings how often the true relief went from one side of the window to the other
 * @param mostNet the farthest position of the rod from as found, without direction
 * @param minutes from the first prompt to the last
 */
public record Outcome(
    String id,
    FirstGap gap,
    boolean handedOver,
    int moves,
    int crossings,
    Turn mostNet,
    long minutes) {
  /** The outcome of a session that was stopped because it would have gone on turning. */
  public static final String UNSETTLED = "unsettled";

  /** The outcome of a session that ended with the relief in its window. */
  public static final String IN_WINDOW = InWindow.OUTCOME;

  /** The outcome that a session ended with, or null where the prompt is not its end. */
  public static @Nullable String word(Prompt end) {
    if (end instanceof Prompt.Done done) {
      return done.outcome();
    }
    return end instanceof Prompt.HandOver over ? over.outcome() : null;
  }

  /** Whether the session ended with the relief read in its window. */
  public boolean settled() {
    return id.equals(IN_WINDOW);
  }
}
