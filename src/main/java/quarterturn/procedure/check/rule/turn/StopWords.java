package quarterturn.procedure.check.rule.turn;

import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import quarterturn.procedure.LessonQuestion;
import quarterturn.procedure.Step;
import quarterturn.procedure.Words;
import quarterturn.procedure.check.rule.Findings;
import quarterturn.procedure.check.rule.Proof;
import quarterturn.procedure.check.rule.Rule;

/** The rule that where a nut jammed, creaked or slipped, no words have it tried once more. */
public final class StopWords {
  public static final Rule RULE =
      new Rule(
          "stop-words",
          "Where a nut jams, creaks or slips, no words have it tried again, and no lesson has it taken on.",
          StopWords::prove);

  private static final Pattern AGAIN =
      Pattern.compile("\\b(another|once more|again|try it|try the|go on|carry on|go further)\\b");

  private static final Pattern DENIED =
      Pattern.compile("\\b(no|not|never|nobody|neither|nor|don't|without|repairer)\\b");

  private static final Pattern STOP =
      Pattern.compile(
          "\\b(creaks?|cracks?|ticks?|clicks?|noise|hard|harder|stiff|stiffer|jams?|slips?|resist\\w*)\\b");

  private static final Pattern ON =
      Pattern.compile(
          "\\b(go|carry|press|push|keep|turn it) on\\b|\\bto the mark\\b|\\bkeep (going|turning)\\b"
              + "|\\bfinish\\b|\\bbeds? in\\b|\\bturn (it )?harder\\b");

  private StopWords() {}

  private static void prove(Proof proof, Findings found) {
    Set<String> ends =
        proof.steps().values().stream()
            .filter(Step.TurnRod.class::isInstance)
            .map(Step.TurnRod.class::cast)
            .flatMap(turn -> proof.limits().stopFeels().stream().map(turn.felt()::get))
            .collect(Collectors.toSet());
    for (Step step : proof.steps().values()) {
      step.words().ask().stream()
          .flatMap(StopWords::goingOn)
          .forEach(
              sentence ->
                  found.add(
                      step,
                      "a lesson has a nut taken on at " + step.id() + ": \"" + sentence + "\"",
                      "let the answer be to stop, and to leave it to a repairer"));
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

  /** The sentences of a question's answers that have a nut taken on which must be left. */
  private static Stream<String> goingOn(LessonQuestion ask) {
    Stream<String> against = ask.ideas().stream().map(LessonQuestion.Idea::because);
    return Stream.concat(Stream.ofNullable(ask.answer()), against)
        .flatMap(Words::sentences)
        .filter(sentence -> stops(ask.question()) || stops(sentence))
        .filter(sentence -> found(ON, sentence) && !found(DENIED, sentence));
  }

  private static boolean stops(String words) {
    return found(STOP, words);
  }

  private static boolean found(Pattern pattern, String words) {
    return pattern.matcher(words.toLowerCase(Locale.ROOT)).find();
  }

  private static boolean again(String sentence) {
    return AGAIN.matcher(sentence).find() && !DENIED.matcher(sentence).find();
  }
}
