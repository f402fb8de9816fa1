package quarterturn.procedure.check.rule;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import quarterturn.procedure.LessonQuestion;
import quarterturn.procedure.Step;

/**
 * The rule that a lesson on a turn or a screw asks all three kinds of question. A procedure that
 * asks none is no lesson, and is left alone.
 */
public final class MissingQuestion {
  private static final Map<String, Predicate<LessonQuestion>> NEEDED = new LinkedHashMap<>();

  static {
    NEEDED.put("- predict: QUESTION", ask -> ask.kind() == LessonQuestion.Kind.PREDICT);
    NEEDED.put(
        "- idea: QUESTION, with wrong: [{says: IDEA, but: REASON}]",
        ask -> ask.kind() == LessonQuestion.Kind.IDEA && !ask.ideas().isEmpty());
    NEEDED.put(
        "- check: QUESTION, with answer: ANSWER",
        ask -> ask.kind() == LessonQuestion.Kind.CHECK && ask.answer() != null);
  }

  public static final Rule RULE =
      new Rule(
          "missing-question",
          "Where turning or adjusting is asked about, one question predicts, one names a wrong idea and"
              + " why not, one checks with an answer.",
          MissingQuestion::prove);

  private MissingQuestion() {}

  private static void prove(Proof proof, Findings found) {
    List<LessonQuestion> asks =
        proof.steps().values().stream().flatMap(step -> step.words().ask().stream()).toList();
    Optional<Step> work =
        proof.steps().values().stream()
            .filter(step -> step instanceof Step.TurnRod || step instanceof Step.Adjust)
            .findFirst();
    List<String> missing =
        NEEDED.entrySet().stream()
            .filter(needed -> asks.stream().noneMatch(needed.getValue()))
            .map(Map.Entry::getKey)
            .toList();
    if (work.isPresent() && !asks.isEmpty() && !missing.isEmpty()) {
      found.add(
          work.get(),
          "the questions of a lesson on " + work.get().id() + " are not all there",
          "add to the ask of this step, or of one before it: " + String.join("; ", missing));
    }
  }
}
