package quarterturn.lesson.teacher;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import quarterturn.lesson.BenchLesson;
import quarterturn.lesson.Keep;
import quarterturn.lesson.LessonEvent;
import quarterturn.lesson.Level;
import quarterturn.lesson.Plan;
import quarterturn.lesson.Ref;
import quarterturn.lesson.store.WriterLog;

/**
 * The record of a lesson at one bench.
 *
 * @param students everybody who was ever there, in the order they came
 * @param stages the parts it came to, in order, each once
 * @param kept what kept it, oldest first
 */
public record BenchRecord(
    BenchLesson bench, List<String> students, List<String> stages, List<Kept> kept) {
  /**
   * Something that kept a bench.
   *
   * @param lasted by the bench's own clock, or null where it was never released
   */
  public record Kept(Keep keep, @Nullable Duration lasted) {}

  /** Every bench of the lesson, by their ids. */
  public static List<BenchRecord> of(Plan plan, List<WriterLog> logs) {
    return DeskView.benches(plan, logs).stream().map(log -> of(log, plan.level())).toList();
  }

  private static BenchRecord of(WriterLog log, Level begin) {
    BenchLesson lesson = BenchLesson.of(DeskView.writer(log), begin, log.events());
    Map<Ref, Instant> taken = new HashMap<>();
    log.all(LessonEvent.Accepted.class).forEach(e -> taken.putIfAbsent(e.ref(), e.at()));
    List<Kept> kept = new ArrayList<>();
    for (Keep keep : lesson.keeps()) {
      Instant released = keep.releasedBy() == null ? null : taken.get(keep.releasedBy());
      // A clock that was set back makes no time negative.
      Duration lasted = released == null ? null : Duration.between(keep.since(), released);
      kept.add(new Kept(keep, lasted == null || !lasted.isNegative() ? lasted : Duration.ZERO));
    }
    return new BenchRecord(
        lesson,
        log.all(LessonEvent.Came.class).map(LessonEvent.Came::student).distinct().toList(),
        log.all(LessonEvent.Stepped.class).map(e -> e.spot().part()).distinct().toList(),
        kept);
  }
}
