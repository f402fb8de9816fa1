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
    return truth.match(
        new Answer.Cases<List<String>>(
            Sights::nothing,
            wrote ->
                wrote.text().equals("-") ? List.of() : List.of("You could write: " + wrote.text()),
            chose -> chosen(prompt, hands),
            measured -> List.of("What the gauges show: " + measured.bracket().typed() + "."),
            value -> read(prompt, Decimals.plain(value.value())),
            cannotMeasure -> List.of("There is nothing to read here."),
            turned -> List.of("How it would feel: " + inside(turned.feel().label()) + "."),
            Sights::nothing,
            Sights::nothing,
            Sights::nothing,
            Sights::nothing,
            Sights::nothing));
  }

  private static List<String> nothing(Answer truth) {
    return List.of();
  }

  private static List<String> read(Prompt prompt, String number) {
    return prompt instanceof Prompt.Measure measure
        ? List.of("What you read: " + number + " " + measure.quantity().unit() + ".")
        : List.of();
  }

  private static List<String> chosen(Prompt prompt, Hands hands) {
    Prompt.Option seen = prompt instanceof Prompt.Choose choose ? hands.seen(choose) : null;
    if (seen != null) {
      return List.of("What you see: " + seen.label() + ".");
    }
    Prompt.Option made = prompt instanceof Prompt.Choose choose ? hands.made(choose) : null;
    return made == null ? List.of() : List.of("You could answer: " + made.label() + ".");
  }

  /** A sentence with a small first letter, to stand within another sentence. */
  private static String inside(String sentence) {
    return sentence.substring(0, 1).toLowerCase(Locale.ROOT) + sentence.substring(1);
  }
}
