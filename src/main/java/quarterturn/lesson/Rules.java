package quarterturn.lesson;

import org.jspecify.annotations.Nullable;

/** What a bench may write after what it has written: the order that a lesson promises. */
final class Rules {
  private Rules() {}

  /** Why {@code event} can't stand here, in a sentence for people; null where it can. */
  static @Nullable String objection(BenchLesson lesson, LessonEvent event) {
    if (event instanceof LessonEvent.Came e) {
      return e.student().isBlank()
          ? "A student needs a name."
          : lesson.students().contains(e.student())
              ? e.student() + " is at this bench already; choose another name."
              : null;
    }
    if (event instanceof LessonEvent.Went e) {
      return here(lesson, e.student());
    }
    if (event instanceof LessonEvent.AskedAgain e) {
      return here(lesson, e.student());
    }
    if (event instanceof LessonEvent.Opened e) {
      return lesson.roundAt(e.spot()) == null ? null : "Predictions are asked for here already.";
    }
    if (event instanceof LessonEvent.Ordered) {
      return "A bench gives no orders.";
    }
    if (event instanceof LessonEvent.Accepted e) {
      return accepted(lesson, e);
    }
    if (event instanceof LessonEvent.Declined e) {
      return lesson.taken().contains(e.ref()) ? "This order was answered already." : null;
    }
    return RoundRules.objection(lesson, event);
  }

  static @Nullable String here(BenchLesson lesson, String student) {
    return lesson.students().contains(student) ? null : student + " is not at this bench.";
  }

  private static @Nullable String accepted(BenchLesson lesson, LessonEvent.Accepted e) {
    if (lesson.taken().contains(e.ref())) {
      return "This order was answered already.";
    }
    if (e.order() instanceof Order.Release release) {
      Refusal refusal = Acceptance.refusal(lesson, release);
      return refusal == null ? null : "This release can't be taken: " + refusal.words() + ".";
    }
    return null;
  }
}
