package quarterturn.lesson.student;

import java.io.Closeable;
import java.io.IOException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import quarterturn.lesson.Acceptance;
import quarterturn.lesson.BenchLesson;
import quarterturn.lesson.LessonEvent;
import quarterturn.lesson.LessonFold;
import quarterturn.lesson.LessonRules;
import quarterturn.lesson.Level;
import quarterturn.lesson.Order;
import quarterturn.lesson.Plan;
import quarterturn.lesson.Ref;
import quarterturn.lesson.store.WriterFile;
import quarterturn.lesson.store.WriterLog;
import quarterturn.session.RefusedException;

/** A bench in a lesson: its file and the state it adds up to. A refused event is not written. */
public final class LessonBench implements Closeable {
  private final WriterFile file;
  private final List<LessonEvent> events;
  private BenchLesson lesson;

  private LessonBench(WriterFile file, BenchLesson lesson) {
    this.file = file;
    this.lesson = lesson;
    this.events = new ArrayList<>(file.found().events());
  }

  /** Opens a bench with all that its file holds. */
  public static LessonBench at(WriterFile file, Level begin) {
    return new LessonBench(file, BenchLesson.of(file.writer(), begin, file.found().events()));
  }

  public BenchLesson lesson() {
    return lesson;
  }

  /** All events in the file, oldest first. */
  public List<LessonEvent> events() {
    return List.copyOf(events);
  }

  /**
   * Records an event, which is on disk when this returns.
   *
   * @throws RefusedException where it can't happen now, saying why
   */
  public void record(LessonEvent event) throws RefusedException, IOException {
    String why = LessonRules.objection(lesson, event);
    if (why != null) {
      throw new RefusedException(why);
    }
    file.append(List.of(event));
    events.add(event);
    lesson = LessonFold.after(lesson, event);
  }

  /** Takes or declines the orders that have come in. */
  public void take(List<WriterLog> logs, Instant at) throws RefusedException, IOException {
    Map<Ref, Order> orders = WriterLog.orders(lesson.bench(), logs);
    LessonEvent answer = Acceptance.next(lesson, orders, at);
    while (answer != null) {
      record(answer);
      answer = Acceptance.next(lesson, orders, at);
    }
  }

  /**
   * The gate that the bench stands at; whatever the lesson notes by itself is on disk when this
   * returns.
   */
  public Gate gate(Moment moment, Plan plan, Instant at) throws RefusedException, IOException {
    Gate gate = new Gatekeeper(lesson, moment, plan, at).gate();
    while (gate instanceof Gate.Record own) {
      record(own.event());
      gate = new Gatekeeper(lesson, moment, plan, at).gate();
    }
    return gate;
  }

  @Override
  public void close() throws IOException {
    file.close();
  }
}
