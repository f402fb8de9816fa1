package quarterturn.session.journal;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.zip.GZIPInputStream;
import quarterturn.session.Event;

/** Sessions that were recorded one event a line, with an empty line after each session. */
public final class RecordedEvents {
  private static final ObjectMapper JSON = new ObjectMapper();

  private RecordedEvents() {}

  /** The sessions in a resource that is packed with gzip. */
  public static List<List<Event>> of(String resource) throws IOException, NotAnEventException {
    List<List<Event>> sessions = new ArrayList<>();
    List<Event> session = new ArrayList<>();
    try (InputStream in = RecordedEvents.class.getResourceAsStream(resource);
        BufferedReader lines =
            new BufferedReader(
                new InputStreamReader(new GZIPInputStream(in), StandardCharsets.UTF_8))) {
      for (String line = lines.readLine(); line != null; line = lines.readLine()) {
        if (line.isEmpty()) {
          sessions.add(List.copyOf(session));
          session.clear();
        } else {
          session.add(EventJson.EVENTS.read(new Fields(JSON.readTree(line))));
        }
      }
    }
    return sessions;
  }
}
