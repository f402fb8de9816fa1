package quarterturn.session.journal;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import quarterturn.session.Event;

/** Writes journals as the program does, but without forcing them to disk. */
public final class Unforced {
  private Unforced() {}

  /** The bytes of a session's whole file. */
  public static byte[] bytes(Journal.Header header, List<Event> events) {
    ByteArrayOutputStream text = new ByteArrayOutputStream();
    SummedLines.Line line = Journal.FORMAT.header(header);
    text.writeBytes(line.bytes());
    for (int i = 0; i < events.size(); i++) {
      line = Journal.FORMAT.event(i + 1, events.get(i), line.sum());
      text.writeBytes(line.bytes());
    }
    return text.toByteArray();
  }

  public static void write(Path file, Journal.Header header, List<Event> events)
      throws IOException {
    Files.write(file, bytes(header, events));
  }
}
