package quarterturn.lesson;

import java.util.function.BiFunction;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * The order of events in a round: all predictions, then the reading; all readings, then their
 * spread.
 */
final class RoundRules {
  private RoundRules() {}

  /**
   * A check of a round's event: its objection is that the round does not exist, or else that of
   * {@code rule}.
   */
  static <E extends LessonEvent.InRound> Function<E, @Nullable String> of(
      BenchLesson lesson, BiFunction<Round, E, @Nullable String> rule) {
    return event -> {
      Round round = lesson.round(event.round());
      return round == null ? "There is no such reading or turn." : rule.apply(round, event);
    };
  }

  static @Nullable String predicted(BenchLesson lesson, Round round, String student) {
    if (round.shown() != null) {
      return "The reading was shown already; a prediction comes before it.";
    }
    if (round.predictions().containsKey(student)) {
      return student + "'s prediction is locked.";
    }
    return LessonRules.here(lesson, student);
  }

  static @Nullable String shown(BenchLesson lesson, Round round) {
    if (round.shown() != null) {
      return "It was shown already.";
    }
    if (lesson.students().isEmpty()) {
      return "No student is at this bench.";
    }
    if (!round.toPredict(lesson.students()).isEmpty()) {
      return "Not every prediction is locked: "
          + String.join(", ", round.toPredict(lesson.students()))
          + " has none yet.";
    }
    return kept(lesson);
  }

  static @Nullable String read(BenchLesson lesson, Round round, String student) {
    if (round.shown() == null) {
      return "Nothing is read before the predictions are locked.";
    }
    if (!round.opened().blind()) {
      return "Here one reading is taken together.";
    }
    if (round.unveiled() != null) {
      return "The readings were shown already.";
    }
    if (round.blind().containsKey(student)) {
      return student + " has read already.";
    }
    String absent = LessonRules.here(lesson, student);
    return absent == null ? kept(lesson) : absent;
  }

  static @Nullable String unveiled(BenchLesson lesson, Round round) {
    if (!round.opened().blind() || round.unveiled() != null || round.blind().isEmpty()) {
      return "There are no hidden readings to show.";
    }
    if (!round.toRead(lesson.students()).isEmpty()) {
      return "Not everybody has read: "
          + String.join(", ", round.toRead(lesson.students()))
          + " has not.";
    }
    return kept(lesson);
  }

  static @Nullable String resulted(BenchLesson lesson, Round round) {
    if (round.shown() == null) {
      return "Nothing is read or turned before the predictions are locked.";
    }
    if (round.opened().blind() && round.unveiled() == null) {
      return "The readings are hidden until all are in.";
    }
    return kept(lesson);
  }

  static @Nullable String reflected(Round round, String student) {
    if (round.result() == null) {
      return "There is no result to think about yet.";
    }
    if (!round.predictions().containsKey(student)) {
      return student + " predicted nothing here.";
    }
    return round.reflected().contains(student) ? student + " has answered already." : null;
  }

  private static @Nullable String kept(BenchLesson lesson) {
    return lesson.keptBy().isEmpty()
        ? null
        : lesson.keptBy().get(0).kind() == Keep.Kind.STOP
            ? "The bench has stopped; the teacher lets it go on."
            : "The bench waits for the teacher.";
  }
}
