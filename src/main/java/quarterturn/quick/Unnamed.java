package quarterturn.quick;

import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import quarterturn.session.Answer;
import quarterturn.session.Prompt;
import quarterturn.unit.BracketParser;
import quarterturn.unit.Digits;
import quarterturn.unit.NotUnderstoodException;

/** Reads answers that were typed without a name. */
public final class Unnamed {
  private Unnamed() {}

  /** The option that a word names or alone begins, or null. */
  public static Prompt.@Nullable Option option(String word, List<Prompt.Option> options) {
    return options.stream()
        .filter(option -> option.id().equals(word) && !Begun.ROUTINE.contains(word))
        .findFirst()
        .orElseGet(() -> Begun.only(word, options, Prompt.Option::id));
  }

  /**
   * A reading.
   *
   * @throws NotUnderstoodException where it is none
   */
  public static Answer reading(String text, Prompt.Measure measure) {
    if (Digits.unended(text).equalsIgnoreCase("cannot")) {
      return new Answer.CannotMeasure();
    }
    return measure.quantity().bracket()
        ? new Answer.Measured(BracketParser.parse(text, measure.step()))
        : new Answer.Value(measure.quantity().value(text));
  }

  /**
   * The answer to a prompt that comes up while a line is read: by a word, since a number can mean
   * another answer to another question. Words of one's own need their name there, and a hazard, a
   * turn and what is to be done first have to be seen.
   *
   * @throws NotUnderstoodException where the prompt does not take it, with what it takes
   */
  static Answer following(String text, Prompt prompt) {
    String word = text.toLowerCase(Locale.ROOT);
    if (prompt instanceof Prompt.Measure measure) {
      return reading(text, measure);
    }
    if (prompt instanceof Prompt.Choose choose) {
      Prompt.Option option = word.matches("\\d*") ? null : option(word, choose.options());
      if (option != null) {
        return new Answer.Chose(option.id());
      }
      throw new NotUnderstoodException(
          "one of "
              + String.join(", ", choose.options().stream().map(Prompt.Option::id).toList())
              + " is wanted");
    }
    if (prompt instanceof Prompt.Write && word.equals("-")) {
      return new Answer.Wrote(word);
    }
    throw new NotUnderstoodException(
        prompt instanceof Prompt.Write
            ? "words are wanted, behind the name " + TypedAhead.wanted(prompt)
            : "that is to be seen first");
  }
}
