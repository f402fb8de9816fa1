package quarterturn.line;

import java.util.List;
import quarterturn.session.Answer;
import quarterturn.session.Prompt;
import quarterturn.unit.Decimals;
import quarterturn.unit.Printable;

/** Says back what was taken, so that a slip is heard at once. */
final class Taken {
  private Taken() {}

  static List<String> of(Answer answer, Prompt prompt) {
    if (answer instanceof Answer.Chose chose && prompt instanceof Prompt.Choose choose) {
      return choose.options().stream()
          .filter(option -> option.id().equals(chose.option()))
          .map(option -> "Taken: " + option.label())
          .toList();
    }
    if (answer instanceof Answer.Measured measured) {
      return List.of("Taken: " + measured.bracket());
    }
    if (answer instanceof Answer.Value value && prompt instanceof Prompt.Measure measure) {
      String number = Decimals.print(value.value(), Decimals.of(measure.step()));
      return List.of("Taken: " + number + " " + measure.quantity().unit());
    }
    if (answer instanceof Answer.Wrote wrote) {
      return List.of("Taken: " + Printable.of(wrote.text()));
    }
    if (answer instanceof Answer.CannotMeasure) {
      return List.of("Taken: can't be measured here");
    }
    if (answer instanceof Answer.Turned turned) {
      return List.of("Taken: " + TurnReader.said(turned));
    }
    if (answer instanceof Answer.Undo) {
      return List.of("Taken: the last turn is to be taken back");
    }
    return answer instanceof Answer.Correct ? List.of("The last answer is taken back.") : List.of();
  }
}
