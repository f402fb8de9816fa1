package quarterturn.lesson.student;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import quarterturn.lesson.BenchLesson;
import quarterturn.lesson.Levels;
import quarterturn.lesson.Prediction;
import quarterturn.lesson.Round;
import quarterturn.procedure.LessonQuestion;

/** What is told after a round, when all students have given their reasons. No marks are given. */
final class Debrief {
  private Debrief() {}

  /**
   * The lines to tell after a round.
   *
   * @param ask the round's question as its procedure has it, or null
   */
  static List<String> lines(Round round, BenchLesson lesson, @Nullable LessonQuestion ask) {
    List<String> out = new ArrayList<>();
    Map<String, Prediction> sorted = new TreeMap<>(round.predictions());
    sorted.forEach(
        (student, prediction) -> {
          String how = how(round.outcome(student));
          if (!how.isEmpty()) {
            out.add(student + ": " + GateWords.prediction(prediction, round) + ". " + how);
          }
        });
    if (ask != null) {
      List<String> key = Questions.key(ask);
      if (!key.isEmpty()) {
        out.add("Asked: " + ask.question());
        out.addAll(key);
      }
    }
    if (!out.isEmpty()) {
      out.add("Shown at this bench from here: " + lesson.level().words() + ". Hazards always.");
    }
    return out;
  }

  private static String how(Levels.Try how) {
    return switch (how) {
      case RIGHT, RIGHT_WITH_HELP -> "It came out like that.";
      case WRONG -> "It came out otherwise.";
      case UNTOLD -> "";
    };
  }
}
