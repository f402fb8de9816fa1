package quarterturn.screen.state;

import quarterturn.session.Answer;

/** What the screen's loop has to do after a key. */
public sealed interface Effect {
  /** Nothing to do. */
  record None() implements Effect {}

  /** Hand the answer to the bench. */
  record Send(Answer answer) implements Effect {}

  /**
   * Give the answers of a typed line to their prompts.
   *
   * @param otherwise the message for a line that names no quantity or step
   */
  record Named(String line, String otherwise) implements Effect {}

  /** Complete the last word of a typed line. */
  record Complete(Field field) implements Effect {}

  /** Leave the session in order, or close it where it has ended. */
  record Leave() implements Effect {}

  /** Paint the whole screen again. */
  record Repaint() implements Effect {}
}
