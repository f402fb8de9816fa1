package quarterturn.lesson;

import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import quarterturn.session.journal.EventLog;
import quarterturn.session.journal.LogFormat;
import quarterturn.session.journal.Shapes;
import quarterturn.unit.Worded;

/**
 * The contents of one writer's file.
 *
 * @param header null where the first line can't be used
 */
public record WriterLog(
    @Nullable Header header, List<LessonEvent> events, @Nullable String notice, int damagedAtLine)
    implements EventLog<LessonEvent> {
  static final LogFormat<Header, LessonEvent, WriterLog> FORMAT =
      new LogFormat<>(
          "a lesson's file",
          "bench or board in it; join the lesson anew",
          "Join the lesson anew under another name.",
          new Shapes().words(Part.class, Part::word).record(Header.class, "lesson writer role"),
          LessonJson.EVENTS,
          Header::writer,
          WriterLog::new);

  /** The kinds of writer: a bench or a board. */
  public enum Part implements Worded {
    BENCH,
    BOARD
  }

  /**
   * The first line of a writer's file.
   *
   * @param lesson id of the lesson; ids sort by their day
   * @param writer id of the writer, which is the file's name
   */
  public record Header(String lesson, String writer, Part role) {}

  /** The events of one kind, oldest first. */
  public <E extends LessonEvent> Stream<E> all(Class<E> kind) {
    return events.stream().filter(kind::isInstance).map(kind::cast);
  }
}
