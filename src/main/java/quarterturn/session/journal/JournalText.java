package quarterturn.session.journal;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import quarterturn.session.Event;

/** The text of a journal, apart from any file: lines from events and back. */
final class JournalText {
  /** The version this program writes, and the newest it reads. */
  static final int FORMAT = 1;

  private JournalText() {}

  /**
   * What a file's bytes say.
   *
   * @param wholeBytes length of the lines that stand, so where the next one goes
   * @param sum of the last line that stands
   */
  record Scan(Journal.Contents contents, long wholeBytes, String sum) {}

  static SummedLines.Line header(Journal.Header header) {
    ObjectNode node = JsonNodeFactory.instance.objectNode();
    node.put("quarterturn", FORMAT).put("session", header.session());
    node.put("procedure", header.procedure()).put("revision", header.revision());
    node.put("digest", header.digest());
    return SummedLines.line(node, "");
  }

  /**
   * The line of an event.
   *
   * @param n its number, counted from one
   * @param before the sum of the line before it
   */
  static SummedLines.Line event(int n, Event event, String before) {
    ObjectNode node = JsonNodeFactory.instance.objectNode().put("n", n);
    return SummedLines.line(node.setAll(EventJson.write(event)), before);
  }

  /**
   * Reads a whole file.
   *
   * @param name the file's name, for the notices
   */
  static Scan scan(byte[] file, String name) {
    Found found = new Found();
    SummedLines.Scan scan =
        SummedLines.scan(file, name, "session in it; start a new session", found);
    Journal.Contents contents =
        new Journal.Contents(found.header, found.events, scan.notice(), scan.damagedAtLine());
    return new Scan(contents, scan.wholeBytes(), scan.sum());
  }

  private static final class Found implements SummedLines.Taker {
    private Journal.@Nullable Header header;
    private final List<Event> events = new ArrayList<>();

    @Override
    public void take(byte[] bytes, int line, String before) throws NotAnEventException {
      if (line == 1) {
        header = header(bytes);
      } else {
        events.add(EventJson.read(SummedLines.numbered(bytes, line - 1, before)));
      }
    }

    private static Journal.Header header(byte[] line) throws NotAnEventException {
      Fields f = new Fields(SummedLines.header(line, FORMAT, "a session"));
      Journal.Header header =
          new Journal.Header(
              f.text("session"), f.text("procedure"), f.whole("revision"), f.text("digest"));
      f.nothingElse();
      return header;
    }
  }
}
