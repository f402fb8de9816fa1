package quarterturn.lesson;

import java.time.Instant;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Decides how a bench takes the desks' orders, one after the other. Where two desks release the
 * same hold, the first that the bench can take is taken, and the other is told that it came late.
 */
public final class Acceptance {
  private Acceptance() {}

  /**
   * The next event a bench has to write about orders it has not answered, or null where there is
   * none. A release of a desk's hold waits until that hold is there, since files of two desks may
   * arrive in any order.
   */
  public static @Nullable LessonEvent next(BenchLesson lesson, Map<Ref, Order> orders, Instant at) {
    for (Map.Entry<Ref, Order> entry : orders.entrySet()) {
      Ref ref = entry.getKey();
      if (!lesson.taken().contains(ref) && !tooEarly(lesson, entry.getValue())) {
        Refusal refusal = refusal(lesson, entry.getValue());
        return refusal == null
            ? new LessonEvent.Accepted(at, ref, entry.getValue())
            : new LessonEvent.Declined(at, ref, refusal);
      }
    }
    return null;
  }

  private static boolean tooEarly(BenchLesson lesson, Order order) {
    return order instanceof Order.Release release
        && !lesson.over()
        && !release.keeps().writer().equals(lesson.bench())
        && lesson.keep(release.keeps()) == null
        && !lesson.taken().contains(release.keeps());
  }

  /** Why a bench would not take an order now, or null where it would. */
  public static @Nullable Refusal refusal(BenchLesson lesson, Order order) {
    if (lesson.over()) {
      return Refusal.OVER;
    }
    if (order instanceof Order.Release release) {
      Keep keep = lesson.keep(release.keeps());
      return keep == null
          ? Refusal.NO_SUCH_HOLD
          : !keep.open()
              ? Refusal.ALREADY_RELEASED
              : release.value().agrees(keep.value()) ? null : Refusal.VALUE_DIFFERS;
    }
    if (order instanceof Order.SetLevel set) {
      return lesson.levels().containsKey(set.student()) ? null : Refusal.NO_SUCH_STUDENT;
    }
    return null;
  }
}
