package quarterturn.line;

import java.util.List;
import quarterturn.quick.Given;
import quarterturn.session.Answer;
import quarterturn.unit.Turn;

/** What a typed line asks for. */
sealed interface Reply {
  /**
   * An answer to give.
   *
   * @param rest what stands on the line for the prompts that follow, in their order
   * @param named what stands on it by its name
   */
  record Give(Answer answer, List<String> rest, List<Given> named) implements Reply {
    /** One with others behind it. */
    Give(Answer answer, List<String> rest) {
      this(answer, rest, List.of());
    }

    static Give one(Answer answer) {
      return new Give(answer, List.of());
    }
  }

  /** Readings and choices given by their names, at least one. */
  record Named(List<Given> given) implements Reply {}

  /** The rod was turned this much, plus tightened; how it felt is still to be asked. */
  record Amount(Turn turn) implements Reply {}

  /** Stay until the wait is over. */
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
    /** Already done. */
    HANDLED
  }

  /** Not understood; the lines mark the word that is at fault. */
  record Marked(List<String> lines) implements Reply {}

  /** Not understood; {@code message} says what is taken. */
  record Bad(String message) implements Reply {}
}
