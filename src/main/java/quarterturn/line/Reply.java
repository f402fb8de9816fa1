package quarterturn.line;

import java.util.List;
import quarterturn.quick.Given;
import quarterturn.session.Answer;

/** What a typed line asks for. */
sealed interface Reply {
  /**
   * A line that answers the prompt.
   *
   * @param rest what stands on the line for the prompts that follow, in their order
   * @param named what stands on it by its name
   */
  record Give(Answer answer, List<String> rest, List<Given> named) implements Reply {
    /** An answer with further parts of the line, none of them by name. */
    Give(Answer answer, List<String> rest) {
      this(answer, rest, List.of());
    }

    static Give one(Answer answer) {
      return new Give(answer, List.of());
    }
  }

  /** Readings and choices given by their names, at least one. */
  record Named(List<Given> given) implements Reply {}

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

  /** A line that was not understood; {@code lines} mark the word at fault. */
  record Marked(List<String> lines) implements Reply {}

  /** A line that was not understood; {@code message} states what can be typed. */
  record Bad(String message) implements Reply {}
}
