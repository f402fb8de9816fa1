package quarterturn.line;

import java.util.List;
import java.util.function.Function;
import quarterturn.session.Answer;
import quarterturn.session.Prompt;
import quarterturn.unit.Decimals;
import quarterturn.unit.Printable;

/** Repeats an answer to the person, so that a slip is noticed at once. */
final class Taken {
  private Taken() {}

  /**
   * The lines that repeat an answer.
   *
   * @param label what stands before it: "Taken", or what was asked for
   */
  static List<String> of(Answer answer, Prompt prompt, String label) {
    Function<String, List<String>> said = words -> List.of(label + ": " + words);
    return answer.match(
        new Answer.Cases<>(
            confirmed -> List.of(),
            wrote -> said.apply(Printable.of(wrote.text())),
            chose -> said.apply(label((Prompt.Choose) prompt, chose.option())),
            measured -> said.apply(measured.bracket().toString()),
            value -> said.apply(number((Prompt.Measure) prompt, value.value())),
            cannot -> said.apply("can't be measured here"),
            turned -> said.apply(TypedTurnReader.said(turned)),
            felt -> said.apply(felt.feel().word() + ", taken to have gone as far as was asked"),
            undo -> said.apply("the last turn is to be taken back"),
            waited -> List.of(),
            correct -> List.of("The last answer is taken back."),
            differs ->
                List.of(
                    "Not as recorded: " + Printable.of(differs.what().said(differs.answer())))));
  }

  private static String label(Prompt.Choose choose, String id) {
    return choose.options().stream()
        .filter(option -> option.id().equals(id))
        .map(Prompt.Option::label)
        .findFirst()
        .orElseThrow();
  }

  private static String number(Prompt.Measure measure, double value) {
    return Decimals.print(value, Decimals.of(measure.step())) + " " + measure.quantity().unit();
  }
}
