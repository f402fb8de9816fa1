package quarterturn.lesson;

import org.jspecify.annotations.Nullable;

/** Checks that an event of a bench keeps the order of events that a lesson promises. */
public final class LessonRules {
  private LessonRules() {}

  /** Why {@code event} can't follow in this lesson, in a sentence for people; null where it can. */
  public static @Nullable String objection(BenchLesson lesson, LessonEvent event) {
    return event.match(
        new LessonEvent.Cases<@Nullable String>(
            LessonRules::none,
            came -> came(lesson, came.student()),
            went -> here(lesson, went.student()),
            LessonRules::none,
            LessonRules::none,
            opened -> opened(lesson, opened),
            RoundRules.of(lesson, (r, e) -> RoundRules.predicted(lesson, r, e.student())),
            RoundRules.of(lesson, (r, e) -> RoundRules.shown(lesson, r)),
            RoundRules.of(lesson, (r, e) -> RoundRules.read(lesson, r, e.student())),
            RoundRules.of(lesson, (r, e) -> RoundRules.unveiled(lesson, r)),
            RoundRules.of(lesson, (r, e) -> RoundRules.resulted(lesson, r)),
            RoundRules.of(lesson, (r, e) -> RoundRules.reflected(r, e.student())),
            LessonRules::none,
            LessonRules::none,
            askedAgain -> here(lesson, askedAgain.student()),
            accepted -> accepted(lesson, accepted),
            declined -> answered(lesson, declined.ref()),
            ordered -> "A bench gives no orders.",
            LessonRules::none,
            LessonRules::none));
  }

  private static @Nullable String none(LessonEvent event) {
    return null;
  }

  private static @Nullable String opened(BenchLesson lesson, LessonEvent.Opened opened) {
    return lesson.rounds().stream()
            .map(Round::opened)
            .anyMatch(o -> o.spot().equals(opened.spot()) && o.turn() == opened.turn())
        ? "Predictions are asked for here already."
        : null;
  }

  private static @Nullable String came(BenchLesson lesson, String student) {
    if (student.isBlank()) {
      return "A student needs a name.";
    }
    return lesson.students().contains(student)
        ? student + " is at this bench already; choose another name."
        : null;
  }

  private static @Nullable String answered(BenchLesson lesson, Ref order) {
    return lesson.taken().contains(order) ? "This order was answered already." : null;
  }

  static @Nullable String here(BenchLesson lesson, String student) {
    return lesson.students().contains(student) ? null : student + " is not at this bench.";
  }

  private static @Nullable String accepted(BenchLesson lesson, LessonEvent.Accepted e) {
    if (e.order() instanceof Order.Release release && !lesson.taken().contains(e.ref())) {
      Refusal refusal = Acceptance.refusal(lesson, release);
      return refusal == null ? null : "This release can't be taken: " + refusal.words() + ".";
    }
    return answered(lesson, e.ref());
  }
}
