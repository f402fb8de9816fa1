package quarterturn.line;

import java.util.List;
import quarterturn.quick.Part;
import quarterturn.session.Answer;

/** What a typed line asks for. */
sealed interface Reply {
  /**
   * A line that answers the prompt.
   *
   * @param rest what stands behind that on the line
   */
  record Give(Answer answer, List<Part> rest) implements Reply {
    static Give one(Answer answer) {
      return new Give(answer, List.of());
    }
  }

  /** A line of parts of which the first does not answer the prompt by itself. */
  record Parts(List<Part> parts) implements Reply {}

  /** The person stays until the wait is over. */
  record Stay() implements Reply {}

  /** A command that answers nothing. */
  enum Command implements Reply {
    HELP,
    WHY,
    LOG,
    NEXT,
    OVERVIEW,
    AGAIN,
    QUIT,
    /** The line has been dealt with; nothing is left to do. */
    HANDLED
  }

  /** A line that was not understood; {@code message} states what can be typed. */
  record Bad(String message) implements Reply {}
}
