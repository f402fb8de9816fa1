package quarterturn.line;

import java.util.List;
import org.jspecify.annotations.Nullable;
import quarterturn.session.Answer;
import quarterturn.session.Prompt;
import quarterturn.unit.Decimals;
import quarterturn.unit.Printable;

/** Says back what was taken, so that a slip is heard at once. */
final class Taken {
  private Taken() {}

  /**
   * The lines that say it.
   *
   * @param label what stands before it: "Taken", or what was asked for
   */
  static List<String> of(Answer answer, Prompt prompt, String label) {
    if (answer instanceof Answer.Correct) {
      return List.of("The last answer is taken back.");
    }
    String words = words(answer, prompt);
    return words == null ? List.of() : List.of(label + ": " + words);
  }

  private static @Nullable String words(Answer answer, Prompt prompt) {
    if (answer instanceof Answer.Chose chose && prompt instanceof Prompt.Choose choose) {
      return choose.options().stream()
          .filter(option -> option.id().equals(chose.option()))
          .map(Prompt.Option::label)
          .findFirst()
          .orElse(null);
    }
    if (answer instanceof Answer.Measured measured) {
      return measured.bracket().toString();
    }
    if (answer instanceof Answer.Value value && prompt instanceof Prompt.Measure measure) {
      String number = Decimals.print(value.value(), Decimals.of(measure.step()));
      return number + " " + measure.quantity().unit();
    }
    if (answer instanceof Answer.Wrote wrote) {
      return Printable.of(wrote.text());
    }
    if (answer instanceof Answer.CannotMeasure) {
      return "can't be measured here";
    }
    if (answer instanceof Answer.Turned turned) {
      return TurnReader.said(turned);
    }
    if (answer instanceof Answer.Undo) {
      return "the last turn is to be taken back";
    }
    return null;
  }
}
