package quarterturn.quick;

import quarterturn.procedure.Quantity;
import quarterturn.session.Answer;

/** Something that was typed before it was asked for. */
public sealed interface Given {
  /** Where it stands on its line, from 0. */
  int at();

  /** As it was typed. */
  String typed();

  /** The answer it is, once it is asked for. */
  Answer answer();

  /**
   * A reading.
   *
   * @param string which string it was read on, 0 is the lowest; -1 for a quantity of the room
   */
  record Reading(Quantity quantity, int string, Answer answer, String typed, int at)
      implements Given {}

  /** A line of words for a step. */
  record Words(String step, String words, String typed, int at) implements Given {
    @Override
    public Answer answer() {
      return new Answer.Wrote(words);
    }
  }

  /** An option of a step. */
  record Choice(String step, String option, String typed, int at) implements Given {
    @Override
    public Answer answer() {
      return new Answer.Chose(option);
    }
  }
}
