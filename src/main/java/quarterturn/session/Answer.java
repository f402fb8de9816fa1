package quarterturn.session;

import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Feel;
import quarterturn.unit.Bracket;
import quarterturn.unit.Turn;

/** What comes back from a prompt. */
public sealed interface Answer {
  /** Done, or accepted. */
  record Confirmed() implements Answer {}

  /** One line of words. */
  record Wrote(String text) implements Answer {}

  /** The option's id. */
  record Chose(String option) implements Answer {}

  /** A gauge reading. */
  record Measured(Bracket bracket) implements Answer {}

  /** One number, in the quantity's unit. */
  record Value(double value) implements Answer {}

  /** The quantity can't be measured here. */
  record CannotMeasure() implements Answer {}

  /**
   * The rod was turned.
   *
   * @param turn what was really turned, plus tightens; zero where the nut did not move
   */
  record Turned(Turn turn, Feel feel) implements Answer {}

  /** At a turn: take the last turn back instead. */
  record Undo() implements Answer {}

  /**
   * The time has passed.
   *
   * @param reason why it may be ended early, or null
   */
  record Waited(@Nullable String reason) implements Answer {}

  /** The last answer was wrong: ask it again. */
  record Correct() implements Answer {}
}
