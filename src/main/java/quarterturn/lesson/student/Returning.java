package quarterturn.lesson.student;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Predicate;
import quarterturn.lesson.BenchLesson;
import quarterturn.lesson.LessonEvent;
import quarterturn.lesson.LessonFold;
import quarterturn.lesson.Level;
import quarterturn.lesson.Levels;
import quarterturn.lesson.Order;
import quarterturn.lesson.Round;
import quarterturn.lesson.store.WriterLog;

/**
 * Questions that a student missed, to come back: at the next lesson, and once they went well there,
 * once more at the seasonal check. A question that is missed again begins anew. A teacher's word on
 * a question comes before how it was answered.
 *
 * <p>Lessons are taken in the order of their ids, which begin with their day; no time of any event
 * is looked at.
 */
public final class Returning {
  private Returning() {}

  private enum Stage {
    NEXT,
    SEASON
  }

  /**
   * The questions that are due, the ones missed first coming first.
   *
   * @param logs all files of the folder
   * @param lesson the lesson that begins now; only earlier ones count
   * @param season whether it is the seasonal check
   */
  public static List<String> due(
      List<WriterLog> logs, String lesson, String student, boolean season) {
    List<WriterLog> begun =
        logs.stream()
            .filter(l -> l.header() != null && l.header().lesson().equals(lesson))
            .toList();
    return due(logs, id -> id.compareTo(lesson) < 0, begun, student, season);
  }

  /** The questions that come back at the lesson after this one. */
  public static List<String> after(List<WriterLog> logs, String lesson, String student) {
    return due(logs, id -> id.compareTo(lesson) <= 0, List.of(), student, false);
  }

  private static List<String> due(
      List<WriterLog> logs,
      Predicate<String> counts,
      List<WriterLog> begun,
      String student,
      boolean season) {
    Map<String, TreeMap<String, WriterLog>> lessons = new TreeMap<>();
    for (WriterLog log : logs) {
      WriterLog.Header header = log.header();
      if (header != null && counts.test(header.lesson())) {
        lessons.computeIfAbsent(header.lesson(), id -> new TreeMap<>()).put(header.writer(), log);
      }
    }
    Map<String, Stage> stages = new LinkedHashMap<>();
    for (TreeMap<String, WriterLog> one : lessons.values()) {
      after(stages, one, student);
    }
    decided(stages, begun, student, Set.of());
    return stages.entrySet().stream()
        .filter(e -> season || e.getValue() == Stage.NEXT)
        .map(Map.Entry::getKey)
        .toList();
  }

  /** Moves a student's questions on by one lesson; one missed at any bench counts as missed. */
  private static void after(
      Map<String, Stage> stages, Map<String, WriterLog> benches, String student) {
    LessonAnswers answers = new LessonAnswers(student);
    benches.forEach(answers::read);
    for (String question : answers.well) {
      Stage before = stages.get(question);
      if (before == Stage.NEXT) {
        stages.put(question, Stage.SEASON);
      } else if (before == Stage.SEASON && answers.season.contains(question)) {
        stages.remove(question);
      }
    }
    for (String question : answers.missed) {
      stages.put(question, Stage.NEXT);
    }
    decided(stages, benches.values(), student, answers.again);
  }

  /**
   * Takes what desks have decided.
   *
   * @param again the questions that came back and went well since, which do not come back for that
   */
  private static void decided(
      Map<String, Stage> stages, Collection<WriterLog> logs, String student, Set<String> again) {
    for (WriterLog log : logs) {
      for (LessonEvent event : log.events()) {
        if (event instanceof LessonEvent.Ordered ordered
            && ordered.order() instanceof Order.ComeBack order
            && order.student().equals(student)) {
          if (!order.again()) {
            stages.remove(order.question());
          } else if (!again.contains(order.question())) {
            stages.put(order.question(), Stage.NEXT);
          }
        }
      }
    }
  }

  /** How one student's questions went in one lesson. */
  private static final class LessonAnswers {
    final TreeSet<String> well = new TreeSet<>();
    final TreeSet<String> missed = new TreeSet<>();
    final TreeSet<String> season = new TreeSet<>();
    final TreeSet<String> again = new TreeSet<>();
    private final String student;

    LessonAnswers(String student) {
      this.student = student;
    }

    void read(String writer, WriterLog log) {
      BenchLesson lesson = BenchLesson.empty(writer, Level.WORKED);
      for (LessonEvent event : log.events()) {
        if (event instanceof LessonEvent.Reflected e && e.student().equals(student)) {
          Round round = lesson.round(e.round());
          // Earlier versions did not see from the answer whether it was missed.
          boolean wrong =
              e.reason() != null && round != null && round.outcome(student) == Levels.Try.WRONG;
          if (e.question() != null) {
            (e.missed() || wrong ? missed : well).add(e.question());
          }
        }
        if (event instanceof LessonEvent.AskedAgain e && e.student().equals(student)) {
          (e.missed() ? missed : well).add(e.question());
          if (!e.missed()) {
            again.add(e.question());
          }
          if (e.season()) {
            season.add(e.question());
          }
        }
        lesson = LessonFold.after(lesson, event);
      }
    }
  }
}
