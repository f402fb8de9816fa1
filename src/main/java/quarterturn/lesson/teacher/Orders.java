package quarterturn.lesson.teacher;

import java.time.Instant;
import quarterturn.lesson.Acceptance;
import quarterturn.lesson.BenchLesson;
import quarterturn.lesson.LessonEvent;
import quarterturn.lesson.Order;
import quarterturn.lesson.Refusal;
import quarterturn.session.RefusedException;

/** What a board may write, checked against the bench as far as the board knows it. */
public final class Orders {
  private Orders() {}

  /**
   * An order for one bench.
   *
   * @throws RefusedException where the bench would not take it, saying why; nothing is to be
   *     written then
   */
  public static LessonEvent.Ordered to(BenchLesson bench, Order order, Instant at)
      throws RefusedException {
    Refusal refusal = Acceptance.refusal(bench, order);
    if (refusal != null) {
      throw new RefusedException("Not done: " + refusal.words() + ".");
    }
    return new LessonEvent.Ordered(at, bench.bench(), order);
  }

  /** A hold for every bench, or the end of the lesson. */
  public static LessonEvent.Ordered toAll(Order order, Instant at) {
    return new LessonEvent.Ordered(at, null, order);
  }
}
