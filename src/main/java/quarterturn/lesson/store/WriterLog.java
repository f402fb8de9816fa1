package quarterturn.lesson.store;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import quarterturn.lesson.LessonEvent;
import quarterturn.lesson.Order;
import quarterturn.lesson.Ref;
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
  public static final LogFormat<Header, LessonEvent, WriterLog> FORMAT =
      new LogFormat<>(
          "a lesson's file",
          "bench or desk in it; join the lesson anew",
          "Join the lesson anew under another name.",
          new Shapes()
              .words(Part.class, Part::word)
              .record(Header.class, "lesson writer role file?"),
          LessonJson.EVENTS,
          Header::named,
          WriterLog::renamed,
          name -> "Go on with the same command as before.",
          WriterLog::new);

  /** The kinds of writer: a bench or a desk, which is written "board". */
  public enum Part implements Worded {
    BENCH,
    BOARD
  }

  /**
   * The first line of a writer's file.
   *
   * @param lesson id of the lesson; ids sort by their day
   * @param writer id of the writer, which is the file's name
   * @param file the file's name where it stands for one that was lost; else null
   */
  public record Header(String lesson, String writer, Part role, @Nullable String file) {
    /** The header of a file that has its writer's name. */
    public Header(String lesson, String writer, Part role) {
      this(lesson, writer, role, null);
    }

    String named() {
      return file == null ? writer : file;
    }
  }

  private Header renamed(String file) {
    Header was = Objects.requireNonNull(header, "an open file has a header");
    return new Header(was.lesson(), was.writer(), was.role(), file);
  }

  /** Whether this file stands for another one of the same writer. */
  boolean replaces(WriterLog other) {
    return header != null
        && other.header != null
        && header.file() != null
        && header.lesson().equals(other.header.lesson())
        && header.writer().equals(other.header.writer())
        && header.role() == other.header.role()
        && (other.header.file() == null || events.size() > other.events.size());
  }

  /** The events of one kind, oldest first. */
  public <E extends LessonEvent> Stream<E> all(Class<E> kind) {
    return events.stream().filter(kind::isInstance).map(kind::cast);
  }

  /** The orders for a bench in all desks' files, by who gave them and in which order. */
  public static Map<Ref, Order> orders(String bench, List<WriterLog> logs) {
    Map<Ref, Order> out = new TreeMap<>();
    for (WriterLog log : logs) {
      if (log.header() != null && log.header().role() == Part.BOARD) {
        for (int i = 0; i < log.events().size(); i++) {
          if (log.events().get(i) instanceof LessonEvent.Ordered o
              && !(o.order() instanceof Order.ComeBack)
              && (o.bench() == null || o.bench().equals(bench))) {
            out.put(new Ref(log.header().writer(), i + 1), o.order());
          }
        }
      }
    }
    return out;
  }
}
