package quarterturn.quick;

import quarterturn.procedure.kind.Quantity;
import quarterturn.session.Answer;
import quarterturn.session.Prompt;

/** An answer that a person typed before its prompt was shown. */
public sealed interface Given {
  /** The text as it was typed, the quantity's or step's name included. */
  String typed();

  /** The answer to give once a prompt asks for this. */
  Answer answer();

  /** Whether both are answers to the same, so that the later one counts. */
  boolean same(Given other);

  /** Whether this was typed under a name. */
  boolean named(Part.Drop name, Terms terms);

  /** Whether a prompt asks for this answer. */
  boolean answers(Prompt prompt, Terms terms);

  /**
   * A typed reading of one quantity.
   *
   * @param string which string it was read on, 0 is the lowest; -1 for a quantity of the room
   */
  record Reading(Quantity quantity, int string, Answer answer, String typed) implements Given {
    @Override
    public boolean same(Given other) {
      return other instanceof Reading one && one.quantity == quantity && one.string == string;
    }

    @Override
    public boolean named(Part.Drop name, Terms terms) {
      return quantity.word().equals(name.name())
          && (name.string() == null || string == terms.strings().indexOf(name.string()));
    }

    @Override
    public boolean answers(Prompt prompt, Terms terms) {
      return prompt instanceof Prompt.Measure measure
          && quantity == measure.quantity()
          && string == (measure.string() == null ? -1 : terms.strings().indexOf(measure.string()));
    }
  }

  /** A line of words for a step that asks for one. */
  record Words(String step, String words, String typed) implements Given {
    @Override
    public boolean same(Given other) {
      return other instanceof Words one && one.step.equals(step);
    }

    @Override
    public boolean named(Part.Drop name, Terms terms) {
      return step.equals(name.name());
    }

    @Override
    public Answer answer() {
      return new Answer.Wrote(words);
    }

    @Override
    public boolean answers(Prompt prompt, Terms terms) {
      return prompt instanceof Prompt.Write && prompt.said().step().equals(step);
    }
  }

  /** A typed choice of one option of a step. */
  record Choice(String step, String option) implements Given {
    @Override
    public boolean same(Given other) {
      return other instanceof Choice one && one.step.equals(step);
    }

    @Override
    public boolean named(Part.Drop name, Terms terms) {
      return step.equals(name.name());
    }

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
