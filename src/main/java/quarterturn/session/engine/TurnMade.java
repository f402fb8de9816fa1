package quarterturn.session.engine;

import java.time.Instant;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.condition.Feel;
import quarterturn.session.Prompt;
import quarterturn.unit.Turn;

/**
 * A rod turn of this session; plus tightened.
 *
 * @param asked the turn that was asked for, or the turn itself where that is unknown
 * @param sure false where the person recalled it after a break and could not tell
 * @param expected the relief expected after it, or null
 * @param freed how far the nut was first turned back and to its mark again, or null
 */
record TurnMade(
    Instant at,
    Turn turn,
    Turn asked,
    Feel feel,
    boolean sure,
    Prompt.@Nullable Expected expected,
    @Nullable Turn freed) {
  /** This turn, which was made at {@code known} or before. */
  TurnMade by(Instant known) {
    return at.isAfter(known) ? new TurnMade(known, turn, asked, feel, sure, expected, freed) : this;
  }

  /** This turn, still counted, but with nothing to be learned from it. */
  TurnMade unsure() {
    return new TurnMade(at, turn, asked, feel, false, expected, freed);
  }
}
