package quarterturn.lesson;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import quarterturn.session.journal.NotAnEventException;
import quarterturn.session.journal.ObjectJson;
import quarterturn.session.journal.Shapes;
import quarterturn.session.journal.SummedLines;

/**
 * What one writer's file says.
 *
 * @param header null where the first line can't be used
 * @param events those that stand, in the writer's order; the first has number one
 * @param notice what is wrong with the file in a sentence for people, or null
 * @param damagedAtLine the first line that can't be used, counted from one; 0 where the file is
 *     sound or only its last line was cut short
 */
public record WriterLog(
    @Nullable Header header, List<LessonEvent> events, @Nullable String notice, int damagedAtLine) {
  /** The version this program writes, and the newest it reads. */
  static final int FORMAT = 1;

  private static final ObjectJson<Header> HEADER =
      new Shapes().words(Part.class, Part::word).record(Header.class, "lesson writer role");

  public WriterLog {
    events = List.copyOf(events);
  }

  /** Who writes a file. */
  public enum Part {
    BENCH("bench"),
    BOARD("board");

    private final String word;

    Part(String word) {
      this.word = word;
    }

    public String word() {
      return word;
    }
  }

  /**
   * What the first line names.
   *
   * @param lesson id of the lesson; ids sort by their day
   * @param writer id of the writer, which is the file's name
   */
  public record Header(String lesson, String writer, Part role) {}

  /** The events of one kind, oldest first. */
  public <E extends LessonEvent> Stream<E> all(Class<E> kind) {
    return events.stream().filter(kind::isInstance).map(kind::cast);
  }

  /** A sound log. */
  public static WriterLog of(Header header, List<LessonEvent> events) {
    return new WriterLog(header, events, null, 0);
  }

  /** How far the bytes go, beside what they say. */
  record Scan(WriterLog log, long wholeBytes, String sum) {}

  static SummedLines.Line line(Header header) {
    ObjectNode node = JsonNodeFactory.instance.objectNode();
    HEADER.write(node.put("quarterturn", FORMAT), header);
    return SummedLines.line(node, "");
  }

  static SummedLines.Line line(int n, LessonEvent event, String before) {
    ObjectNode node = JsonNodeFactory.instance.objectNode().put("n", n);
    return SummedLines.line(node.setAll(LessonJson.write(event)), before);
  }

  /**
   * Reads a whole file.
   *
   * @param name the file's name, for the notices
   */
  static Scan scan(byte[] file, String name) {
    Taken taken = new Taken(name);
    SummedLines.Scan scan =
        SummedLines.scan(file, name, "bench or board in it; join the lesson anew", taken);
    WriterLog log = new WriterLog(taken.header, taken.events, scan.notice(), scan.damagedAtLine());
    return new Scan(log, scan.wholeBytes(), scan.sum());
  }

  private static final class Taken implements SummedLines.Taker {
    private final String name;
    private @Nullable Header header;
    private final List<LessonEvent> events = new ArrayList<>();

    Taken(String name) {
      this.name = name;
    }

    @Override
    public void take(byte[] bytes, int line, String before) throws NotAnEventException {
      if (line == 1) {
        header = header(SummedLines.header(bytes, FORMAT, "a lesson's file"));
      } else {
        events.add(LessonJson.read(SummedLines.numbered(bytes, line - 1, before)));
      }
    }

    private Header header(ObjectNode line) throws NotAnEventException {
      Header read = HEADER.read(line);
      if (!name.equals(read.writer() + ".jsonl")) {
        throw new NotAnEventException(
            "it is a copy of " + read.writer() + "'s file under another name");
      }
      return read;
    }
  }
}
