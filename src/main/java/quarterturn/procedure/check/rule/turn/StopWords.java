package quarterturn.procedure.check.rule.turn;

import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import quarterturn.procedure.Step;
import quarterturn.procedure.check.rule.Findings;
import quarterturn.procedure.check.rule.Proof;
import quarterturn.procedure.check.rule.Rule;

/** The rule that where a nut jammed, creaked or slipped, no words have it tried once more. */
public final class StopWords {
  public static final Rule RULE =
      new Rule(
          "stop-words",
          "Where a nut that jams, creaks or slips leads to, no words have it tried again.",
          StopWords::prove);

  private static final Pattern AGAIN =
      Pattern.compile("\\b(another|once more|again|try it|try the|go on|carry on|go further)\\b");

  private static final Pattern DENIED =
      Pattern.compile("\\b(no|not|never|neither|nor|don't|without|repairer)\\b");

  private StopWords() {}

  private static void prove(Proof proof, Findings found) {
    Set<String> ends =
        proof.steps().values().stream()
            .filter(Step.TurnRod.class::isInstance)
            .map(Step.TurnRod.class::cast)
            .flatMap(turn -> proof.limits().stopFeels().stream().map(turn.felt()::get))
            .collect(Collectors.toSet());
    for (Step step : proof.steps().values()) {
      if (ends.contains(step.id())) {
        step.words()
            .sentences()
            .filter(sentence -> again(sentence.toLowerCase(Locale.ROOT)))
            .forEach(
                sentence ->
                    found.add(
                        step,
                        step.id()
                            + " has a nut tried again that must be left: \""
                            + sentence
                            + "\"",
                        "let a qualified repairer look, and nothing else"));
      }
    }
  }

  private static boolean again(String sentence) {
    return AGAIN.matcher(sentence).find() && !DENIED.matcher(sentence).find();
  }
}
