package quarterturn.lesson;

import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import quarterturn.session.Lists;
import quarterturn.unit.Bracket;

/**
 * One reading or turn in a lesson: students predict it, see it, and reflect on it.
 *
 * @param n the number of its {@link LessonEvent.Opened}
 * @param predictions those that are locked, by student
 * @param shown when the reading or turn was shown, or null
 * @param blind each student's own reading
 * @param unveiled when these were shown, or null
 * @param result what was read or turned, or null
 * @param resulted when, or null
 * @param reflected who has said what they make of it
 */
public record Round(
    int n,
    LessonEvent.Opened opened,
    Map<String, Prediction> predictions,
    @Nullable Instant shown,
    Map<String, Bracket> blind,
    @Nullable Instant unveiled,
    @Nullable Value result,
    @Nullable Instant resulted,
    List<String> reflected) {
  static Round of(int n, LessonEvent.Opened opened) {
    return new Round(n, opened, Map.of(), null, Map.of(), null, null, null, List.of());
  }

  Round predicted(String student, Prediction prediction) {
    Map<String, Prediction> now = Lists.with(predictions, student, prediction);
    return new Round(n, opened, now, shown, blind, unveiled, result, resulted, reflected);
  }

  Round shown(Instant at) {
    return new Round(n, opened, predictions, at, blind, unveiled, result, resulted, reflected);
  }

  Round read(String student, Bracket bracket) {
    Map<String, Bracket> now = Lists.with(blind, student, bracket);
    return new Round(n, opened, predictions, shown, now, unveiled, result, resulted, reflected);
  }

  Round unveiled(Instant at) {
    return new Round(n, opened, predictions, shown, blind, at, result, resulted, reflected);
  }

  Round resulted(Value value, Instant at) {
    return new Round(n, opened, predictions, shown, blind, unveiled, value, at, reflected);
  }

  Round reflected(String student) {
    List<String> more = Lists.with(reflected, student);
    return new Round(n, opened, predictions, shown, blind, unveiled, result, resulted, more);
  }

  /** Whether only the way of a turn was asked, as is done before the turn's step is shown. */
  boolean wayAlone() {
    return opened.turn() && predictions.values().stream().allMatch(p -> p.size() == 0);
  }

  /** The {@code students} whose prediction is not locked. */
  public List<String> toPredict(Collection<String> students) {
    return opened.unasked() != null
        ? List.of()
        : students.stream().filter(s -> !predictions.containsKey(s)).toList();
  }

  /** The students who have not read for themselves. */
  public List<String> toRead(Collection<String> students) {
    return students.stream().filter(s -> !blind.containsKey(s)).toList();
  }

  /** The students who predicted what has come out by now, and have not reflected on it. */
  public List<String> toReflect(Collection<String> students) {
    if (result == null || result instanceof Value.None) {
      return List.of();
    }
    return students.stream()
        .filter(s -> predictions.containsKey(s) && !reflected.contains(s))
        .toList();
  }

  /**
   * What a student makes of the way of a turn; one who predicted the wrong way is asked again next
   * time.
   *
   * @param reason in the student's words, or null
   */
  public LessonEvent.Reflected way(Instant at, String student, @Nullable String reason) {
    Prediction prediction = predictions.get(student);
    boolean wrong = opened.turn() && outcome(student) == Levels.Try.WRONG;
    Direction way = !wrong || prediction == null ? null : prediction.direction();
    return new LessonEvent.Reflected(
        at,
        n,
        student,
        reason,
        way == null ? null : Questioning.WAY.question(),
        way == null ? null : way.words(true),
        way != null);
  }

  /** How a student's prediction came out. */
  public Levels.Try outcome(String student) {
    Prediction prediction = predictions.get(student);
    return prediction == null || result == null
        ? Levels.Try.UNTOLD
        : prediction.against(opened.before(), result, opened.step());
  }
}
