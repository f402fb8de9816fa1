package quarterturn.line;

import java.io.IOException;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import quarterturn.lesson.BenchLesson;
import quarterturn.lesson.EverySecond;
import quarterturn.lesson.Keep;
import quarterturn.lesson.Ref;
import quarterturn.lesson.student.LessonSession;
import quarterturn.session.RefusedException;
import quarterturn.unit.Printable;

/** Looks for the desks' orders while a line is being typed, and prints what they changed. */
final class LessonWatch implements AutoCloseable {
  private final LessonSession session;
  private final Consumer<String> say;
  private final EverySecond looks;
  private BenchLesson before;
  private volatile @Nullable Exception broke;

  /** Begins to watch a session, once a second. */
  LessonWatch(LessonSession session, Consumer<String> say) {
    this.session = session;
    this.say = say;
    this.before = session.lesson();
    this.looks = EverySecond.begin("look for the teacher's orders", this::look);
  }

  /** What ended the watching, or null. */
  @Nullable Exception broke() {
    return broke;
  }

  private void look() {
    if (broke != null) {
      return;
    }
    try {
      session.look();
      BenchLesson now = session.lesson();
      changes(before, now).forEach(say);
      before = now;
    } catch (IOException | RefusedException | RuntimeException e) {
      broke = e;
      say.accept("The teacher's orders can't be taken any more: " + e.getMessage());
    }
  }

  /** What the teacher did between two looks, in words for the students. */
  static List<String> changes(BenchLesson before, BenchLesson now) {
    if (now.over()) {
      return before.over() ? List.of() : List.of("The teacher has ended the lesson. Press Enter.");
    }
    Set<Ref> kept = new HashSet<>();
    before.keptBy().forEach(keep -> kept.add(keep.ref()));
    for (Keep keep : now.keptBy()) {
      if (!kept.contains(keep.ref()) && keep.kind() == Keep.Kind.TEACHER) {
        return List.of(
            "The teacher holds this bench: " + Printable.of(keep.what()) + ". Press Enter.");
      }
    }
    boolean released = now.keptBy().isEmpty() && !before.keptBy().isEmpty();
    return released ? List.of("The teacher lets this bench go on. Press Enter.") : List.of();
  }

  @Override
  public void close() {
    looks.close();
  }
}
