package quarterturn.procedure;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A question for a lesson.
 *
 * @param kind when it is put
 * @param about id of the step whose result answers it, or null
 * @param answer what a good answer says, or null where there is no one answer
 * @param ideas wrong ideas that students bring along, each with what speaks against it
 */
public record LessonQuestion(
    Kind kind, String question, @Nullable String about, @Nullable String answer, List<Idea> ideas) {
  public LessonQuestion {
    ideas = List.copyOf(ideas);
  }

  /** A question to think about beforehand, without an answer key. */
  public LessonQuestion(String question, @Nullable String about) {
    this(Kind.PREDICT, question, about, null, List.of());
  }

  /** When a question is put. */
  public enum Kind {
    /** Put before the reading or turn, to be thought about with the prediction. */
    PREDICT,
    /** Put afterwards about a changed case, which a wrong idea would answer wrongly. */
    IDEA,
    /** Put afterwards and answered by a number or a reason. */
    CHECK
  }

  /** A wrong idea that many hold, in their own words, and what speaks against it. */
  public record Idea(String idea, String because) {}
}
