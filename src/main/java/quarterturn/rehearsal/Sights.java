package quarterturn.rehearsal;

import java.util.List;
import java.util.Locale;
import quarterturn.session.Answer;
import quarterturn.session.Prompt;
import quarterturn.unit.Decimals;

/** What a person at a simulated neck would see and feel, in words. */
final class Sights {
  private Sights() {}

  static List<String> of(Prompt prompt, Answer truth, Hands hands) {
    if (truth instanceof Answer.Measured measured) {
      return List.of("What the leaves show: " + measured.bracket().typed() + ".");
    }
    if (truth instanceof Answer.Value value && prompt instanceof Prompt.Measure measure) {
      String number = Decimals.plain(value.value()) + " " + measure.quantity().unit();
      return List.of("What you read: " + number + ".");
    }
    if (truth instanceof Answer.CannotMeasure) {
      return List.of("There is nothing to read here.");
    }
    if (truth instanceof Answer.Wrote wrote && !wrote.text().equals("-")) {
      return List.of("You could write: " + wrote.text());
    }
    if (truth instanceof Answer.Turned turned) {
      String feel = turned.feel().label();
      return List.of(
          "How it would feel: "
              + feel.substring(0, 1).toLowerCase(Locale.ROOT)
              + feel.substring(1)
              + ".");
    }
    if (prompt instanceof Prompt.Choose choose) {
      Prompt.Option seen = hands.seen(choose);
      return seen == null ? List.of() : List.of("What you see: " + seen.label() + ".");
    }
    return List.of();
  }
}
