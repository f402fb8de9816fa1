package quarterturn.screen.state;

import quarterturn.session.Answer;

/** What the loop is to do after an update. */
public sealed interface Effect {
  /** Nothing more. */
  record None() implements Effect {}

  /** Hand the answer to the bench. */
  record Send(Answer answer) implements Effect {}

  /**
   * Give what a typed line names.
   *
   * @param otherwise what to say where it names nothing
   */
  record Named(String line, String otherwise) implements Effect {}

  /** Complete the last word of a typed line. */
  record Complete(Field field) implements Effect {}

  /** Leave the session in order, or close it where it has ended. */
  record Leave() implements Effect {}

  /** Paint everything anew. */
  record Repaint() implements Effect {}
}
