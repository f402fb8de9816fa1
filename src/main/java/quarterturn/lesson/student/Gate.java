package quarterturn.lesson.student;

import java.time.Duration;
import java.util.List;
import org.jspecify.annotations.Nullable;
import quarterturn.lesson.Keep;
import quarterturn.lesson.LessonEvent;
import quarterturn.lesson.Round;
import quarterturn.lesson.Spread;

/** What has to happen before a session's prompt may be shown and answered. */
public sealed interface Gate {
  /** How long no answer to a question is taken, so that everybody thinks first. */
  Duration QUESTION_PAUSE = Duration.ofSeconds(5);

  /** Whether this is the same page as another one, of which more may be answered. */
  default boolean goesOnFrom(Gate other) {
    if (this instanceof Predict a && other instanceof Predict b) {
      return a.round.n() == b.round.n();
    }
    return this instanceof Reflect c && other instanceof Reflect d
        ? c.round.n() == d.round.n()
        : equals(other);
  }

  /** An event is to be appended, and then the gate asked for again. */
  record Record(LessonEvent event) implements Gate {}

  /** The teacher has ended the lesson: leave the instrument in order. */
  record Over() implements Gate {}

  /** Somebody pressed stop. */
  record Stopped(Keep stop) implements Gate {}

  /** The teacher has to let the bench go on. */
  record Held(Keep hold) implements Gate {}

  /** No student is at the bench. */
  record Nobody() implements Gate {}

  /**
   * Predictions are to be locked.
   *
   * @param missing who has not locked one
   */
  record Predict(Round round, List<String> missing) implements Gate {}

  /**
   * Each student reads alone; what the others read is not to be shown.
   *
   * @param missing who has not read
   */
  record ReadBlind(int round, List<String> missing) implements Gate {}

  /**
   * Students compare predictions and result, and answer a question; whether they were right is told
   * when all have answered.
   *
   * @param missing who has not answered
   * @param question about a changed case; null where one line is wanted on why it came so
   */
  record Reflect(Round round, List<String> missing, @Nullable String question) implements Gate {}

  /**
   * The prompt may be shown and answered.
   *
   * @param spread of the readings everybody took, or null
   */
  record Open(@Nullable Spread spread) implements Gate {}
}
