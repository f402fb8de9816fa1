package quarterturn.session.engine;

import java.time.Instant;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.condition.Feel;
import quarterturn.session.Prompt;
import quarterturn.unit.Turn;

/**
 * A rod turn of this session, plus tightened.
 *
 * @param asked what was asked for, or the turn itself where that is not known
 * @param sure false where it was recalled after a break and the person could not tell
 * @param expected what the reading after it should show, or null
 */
record TurnMade(
    Instant at,
    Turn turn,
    Turn asked,
    Feel feel,
    boolean sure,
    Prompt.@Nullable Expected expected) {
  /** This turn where nothing can be learned from it any more; it still counts. */
  TurnMade unsure() {
    return new TurnMade(at, turn, asked, feel, false, expected);
  }
}
