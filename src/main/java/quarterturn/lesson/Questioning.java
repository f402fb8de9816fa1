package quarterturn.lesson;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.LessonQuestion;
import quarterturn.unit.Worded;

/** How many of a procedure's questions a lesson asks. */
public enum Questioning implements Worded {
  FEW("one in each procedure"),
  SOME("one after each reading or turn that was predicted"),
  ALL("the same, and at each step what there is to talk about");

  /** What comes back to a student who predicted the wrong way of a turn. */
  public static final LessonQuestion WAY =
      new LessonQuestion(
          LessonQuestion.Kind.CHECK,
          "The gap is too small. Which way is an ordinary truss rod turned?",
          null,
          "Loosen it. Tightening makes the gap smaller, loosening makes it larger.",
          List.of(
              new LessonQuestion.Idea("Tighten it.", "Tightening makes the gap smaller still.")));

  private final String words;

  Questioning(String words) {
    this.words = words;
  }

  /** What is asked, in words for people. */
  public String words() {
    return words;
  }

  /**
   * The question to ask after a round that begins now, or null. Each is asked once, and only one
   * that has wrong ideas to choose from, so that it shows what was missed.
   *
   * @param asks the step's questions, the first to be asked coming first
   */
  public @Nullable String choose(List<LessonQuestion> asks, List<Round> rounds, Spot spot) {
    Set<String> asked = new HashSet<>();
    boolean enough = false;
    for (Round round : rounds) {
      String question = round.opened().question();
      if (question != null) {
        asked.add(question);
        enough |= this == FEW && round.opened().spot().procedure().equals(spot.procedure());
      }
    }
    return enough
        ? null
        : asks.stream()
            .filter(ask -> ask.kind() != LessonQuestion.Kind.PREDICT && !ask.ideas().isEmpty())
            .map(LessonQuestion::question)
            .filter(question -> !asked.contains(question))
            .findFirst()
            .orElse(null);
  }
}
