package quarterturn.lesson.student;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import quarterturn.lesson.BenchLesson;
import quarterturn.lesson.Levels;
import quarterturn.lesson.Round;
import quarterturn.lesson.Value;
import quarterturn.procedure.LessonQuestion;

/** What is told after a round, when all students have answered. No marks are given. */
final class Debrief {
  private Debrief() {}

  /** Why a turn went its way, where somebody predicted another; no line where nobody did. */
  static List<String> way(Round round) {
    boolean all =
        round.predictions().keySet().stream()
            .noneMatch(student -> round.outcome(student) == Levels.Try.WRONG);
    if (all || !(round.result() instanceof Value.Rod rod)) {
      return List.of();
    }
    String why =
        rod.turn().turns() > 0
            ? "Tightening an ordinary rod makes the gap smaller."
            : "Loosening an ordinary rod makes the gap larger.";
    return List.of("The turn was: " + rod + ". " + why);
  }

  /**
   * The lines to tell after a round.
   *
   * @param ask the round's question as its procedure has it, or null
   */
  static List<String> lines(Round round, BenchLesson lesson, @Nullable LessonQuestion ask) {
    List<String> out = new ArrayList<>();
    if (round.result() instanceof Value.None) {
      return out;
    }
    out.addAll(GateWords.beside(round));
    String right =
        round.predictions().keySet().stream()
            .filter(student -> round.outcome(student) != Levels.Try.WRONG)
            .sorted()
            .collect(Collectors.joining(", "));
    out.add(
        right.isEmpty()
            ? "It came otherwise than predicted."
            : "It came as predicted by " + right + ".");
    if (ask != null) {
      List<String> key = Questions.key(ask);
      if (!key.isEmpty()) {
        out.add("Asked: " + ask.question());
        out.addAll(key);
      }
    }
    out.add("Shown at this bench from here: " + lesson.level().words() + ". Hazards always.");
    return out;
  }
}
