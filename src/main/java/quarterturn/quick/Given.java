package quarterturn.quick;

import quarterturn.procedure.kind.Quantity;
import quarterturn.session.Answer;
import quarterturn.session.Prompt;

/** Something that was typed before it was asked for. */
public sealed interface Given {
  /** As it was typed, with its name. */
  String typed();

  /** The answer it is, once it is asked for. */
  Answer answer();

  /** Whether a prompt asks for it. */
  boolean answers(Prompt prompt, Terms terms);

  /**
   * A reading.
   *
   * @param string which string it was read on, 0 is the lowest; -1 for a quantity of the room
   */
  record Reading(Quantity quantity, int string, Answer answer, String typed) implements Given {
    @Override
    public boolean answers(Prompt prompt, Terms terms) {
      return prompt instanceof Prompt.Measure measure
          && quantity == measure.quantity()
          && string == (measure.string() == null ? -1 : terms.strings().indexOf(measure.string()));
    }
  }

  /** A line of words for a step. */
  record Words(String step, String words, String typed) implements Given {
    @Override
    public Answer answer() {
      return new Answer.Wrote(words);
    }

    @Override
    public boolean answers(Prompt prompt, Terms terms) {
      return prompt instanceof Prompt.Write && prompt.said().step().equals(step);
    }
  }

  /** An option of a step. */
  record Choice(String step, String option) implements Given {
    @Override
    public String typed() {
      return step + " " + option;
    }

    @Override
    public Answer answer() {
      return new Answer.Chose(option);
    }

    @Override
    public boolean answers(Prompt prompt, Terms terms) {
      return prompt instanceof Prompt.Choose choose
          && choose.said().step().equals(step)
          && choose.options().stream().anyMatch(o -> o.id().equals(option));
    }
  }
}
