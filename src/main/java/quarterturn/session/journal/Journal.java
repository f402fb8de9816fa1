package quarterturn.session.journal;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;
import quarterturn.session.Event;

/** One session on disk. */
public final class Journal extends EventFile<Event, Journal.Contents> {
  static final LogFormat<Header, Event, Contents> FORMAT =
      new LogFormat<>(
          "a session",
          "session in it; start a new session",
          "Start a new session to go on; the log up to there can still be read.",
          new Shapes().record(Header.class, "session procedure revision digest"),
          EventJson.EVENTS,
          header -> null,
          Contents::new);

  /** What the first line names. */
  public record Header(String session, String procedure, int revision, String digest) {}

  /** What a session's file says; the header is null where the first line can't be used. */
  public record Contents(
      @Nullable Header header, List<Event> events, @Nullable String notice, int damagedAtLine)
      implements EventLog<Event> {}

  /** The session is open elsewhere. */
  public static final class InUse extends IOException {
    private static final long serialVersionUID = 1L;

    InUse(String session) {
      super("session " + session + " is open in another window; close it there first");
    }
  }

  /** Seen from tests, which hand in a file on a full disk. */
  Journal(ForcedFile file, LogFormat.Scan<Contents> scan) {
    super(FORMAT, file, scan);
  }

  /** Makes a new journal, as {@link LogFormat#create}. */
  public static Journal create(Path file, Header header) throws IOException {
    return FORMAT.create(file, header, Journal::new);
  }

  /** Opens a journal to append to it, as {@link LogFormat#open}. */
  public static Journal open(Path file) throws IOException {
    return FORMAT.open(file, Journal::new);
  }

  /** Reads a journal, as {@link LogFormat#read}. */
  public static Contents read(Path file) throws IOException {
    return FORMAT.read(file);
  }
}
