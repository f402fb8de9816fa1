package quarterturn.lesson.teacher;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import quarterturn.lesson.BenchLesson;
import quarterturn.lesson.LessonEvent;
import quarterturn.lesson.Level;
import quarterturn.lesson.Levels;
import quarterturn.lesson.Plan;
import quarterturn.lesson.Prediction;
import quarterturn.lesson.Questioning;
import quarterturn.lesson.Round;
import quarterturn.lesson.Spot;
import quarterturn.lesson.Value;
import quarterturn.lesson.store.WriterLog;
import quarterturn.lesson.student.Returning;
import quarterturn.unit.Bracket;

/**
 * The record of a lesson for one student, from the benches' files alone.
 *
 * @param benches where the student sat, as they are called
 * @param tries every prediction since its result could be seen, bench by bench, oldest first
 * @param levels where the student stood, and each change
 * @param again questions of earlier lessons that were asked once more
 * @param returning questions that come back at the next lesson
 */
public record StudentRecord(
    String student,
    List<String> benches,
    List<Tried> tries,
    List<Stood> levels,
    List<LessonEvent.AskedAgain> again,
    List<String> returning) {
  /**
   * A student's prediction with its result.
   *
   * @param bench as it is called
   * @param own what the student read for themselves, once the readings were shown; or null
   * @param result what the bench read or turned, or null
   * @param reflected what the student made of it, or null
   */
  public record Tried(
      String bench,
      LessonEvent.Opened opened,
      Prediction prediction,
      @Nullable Bracket own,
      @Nullable Value result,
      LessonEvent.@Nullable Reflected reflected) {}

  /**
   * A student's standing from one moment on.
   *
   * @param at by the bench's clock
   * @param spot where the bench was, or null
   * @param byTeacher whether a desk set it
   */
  public record Stood(
      String bench, Instant at, @Nullable Spot spot, Levels.Standing standing, boolean byTeacher) {}

  /** The questions that the student was asked or that come back, each once. */
  public List<String> questions() {
    return Stream.of(
            tries.stream()
                .map(Tried::reflected)
                .filter(Objects::nonNull)
                .map(LessonEvent.Reflected::question)
                .filter(Objects::nonNull),
            again.stream().map(LessonEvent.AskedAgain::question),
            returning.stream())
        .flatMap(questions -> questions)
        .distinct()
        .toList();
  }

  /**
   * An answer to a question.
   *
   * @param missed whether it comes back
   */
  public record Answered(String question, boolean missed) {}

  /** The answers to questions: those of earlier lessons, which come first, and this one's. */
  List<Answered> answers() {
    List<Answered> out = new ArrayList<>();
    again.forEach(asked -> out.add(new Answered(asked.question(), asked.missed())));
    for (Tried tried : tries) {
      LessonEvent.Reflected reflected = tried.reflected();
      // The way of a turn is an idea of its own.
      boolean way =
          Questioning.WAY.question().equals(reflected == null ? "" : reflected.question());
      if (reflected != null && reflected.question() != null && !way) {
        out.add(new Answered(reflected.question(), reflected.missed()));
      }
    }
    return out;
  }

  /** Everybody who sat at a bench of this lesson, in the order of their names. */
  public static List<StudentRecord> of(Plan plan, List<WriterLog> logs) {
    List<WriterLog> benches = DeskView.benches(plan, logs);
    return benches.stream()
        .flatMap(bench -> bench.all(LessonEvent.Came.class).map(LessonEvent.Came::student))
        .distinct()
        .sorted()
        .map(student -> of(student, plan, benches, logs))
        .toList();
  }

  private static StudentRecord of(
      String student, Plan plan, List<WriterLog> benches, List<WriterLog> logs) {
    Reader reader = new Reader(student);
    benches.forEach(bench -> reader.read(bench, plan.level()));
    return new StudentRecord(
        student,
        reader.benches,
        reader.tries,
        reader.levels,
        reader.again,
        Returning.after(logs, plan.lesson(), student));
  }

  /** Goes through the benches' files for one student. */
  private static final class Reader {
    final List<String> benches = new ArrayList<>();
    final List<Tried> tries = new ArrayList<>();
    final List<Stood> levels = new ArrayList<>();
    final List<LessonEvent.AskedAgain> again = new ArrayList<>();
    private final String student;

    Reader(String student) {
      this.student = student;
    }

    void read(WriterLog log, Level begin) {
      BenchLesson lesson = BenchLesson.empty(DeskView.writer(log), begin);
      List<Stood> stood = new ArrayList<>();
      List<LessonEvent.Reflected> reflected =
          log.all(LessonEvent.Reflected.class).filter(e -> e.student().equals(student)).toList();
      log.all(LessonEvent.AskedAgain.class)
          .filter(e -> e.student().equals(student))
          .forEach(again::add);
      for (LessonEvent event : log.events()) {
        Levels.Standing before = lesson.levels().get(student);
        lesson = lesson.after(event);
        Levels.Standing now = lesson.levels().get(student);
        boolean other =
            now != null
                && (before == null
                    || before.level() != now.level()
                    || before.frozen() != now.frozen());
        if (other && now != null) {
          boolean byTeacher = event instanceof LessonEvent.Accepted;
          stood.add(new Stood(lesson.name(), event.at(), lesson.spot(), now, byTeacher));
        }
      }
      if (lesson.levels().containsKey(student)) {
        benches.add(lesson.name());
        levels.addAll(stood);
        for (Round round : lesson.rounds()) {
          tries(lesson.name(), round, lesson.about(round), reflected);
        }
      }
    }

    private void tries(
        String bench, Round round, Spot about, List<LessonEvent.Reflected> reflected) {
      Prediction prediction = round.predictions().get(student);
      // A sheet that is printed early shows nobody what others still predict.
      if (prediction != null && round.shown() != null) {
        tries.add(
            new Tried(
                bench,
                round.opened().about(about),
                prediction,
                round.unveiled() == null ? null : round.blind().get(student),
                round.result(),
                reflected.stream().filter(r -> r.round() == round.n()).findFirst().orElse(null)));
      }
    }
  }
}
