package quarterturn.session.journal;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import quarterturn.session.Event;
import quarterturn.session.Program;

/** The file of one session on disk. */
public final class Journal extends EventFile<Event, Journal.Contents> {
  static final LogFormat<Header, Event, Contents> FORMAT =
      new LogFormat<>(
          "a session",
          "session in it; start a new session",
          "Start a new session to go on; the log up to there can still be read.",
          new Shapes().record(Header.class, "session procedure revision digest"),
          EventJson.EVENTS,
          header -> null,
          Contents::renamed,
          name -> "Go on with: " + Program.here().typed("resume " + name),
          Contents::new);

  /** Makes ready how events are written; else the first session to be opened waits for it. */
  public static void prepare() {
    Objects.requireNonNull(FORMAT);
  }

  /** The data of a journal's first line. */
  public record Header(String session, String procedure, int revision, String digest) {}

  /** The contents of a session's file; the header is null where the first line can't be used. */
  public record Contents(
      @Nullable Header header, List<Event> events, @Nullable String notice, int damagedAtLine)
      implements EventLog<Event> {
    private Header renamed(String session) {
      Header was = Objects.requireNonNull(header, "an open file has a header");
      return new Header(session, was.procedure, was.revision, was.digest);
    }
  }

  /** Thrown when another window has the session open. */
  public static final class InUse extends IOException {
    private static final long serialVersionUID = 1L;

    InUse(String session) {
      super("session " + session + " is open in another window; close it there first");
    }
  }

  /** A journal from its parts; tests give a file on a full disk. */
  Journal(ForcedFile file, LogFormat.Scan<Contents> scan) {
    super(FORMAT, file, scan);
  }

  /** Makes a new journal; see {@link LogFormat#create}. */
  public static Journal create(Path file, Header header) throws IOException {
    return FORMAT.create(file, header, Journal::new);
  }

  /** Opens a journal to append to it; see {@link LogFormat#open}. */
  public static Journal open(Path file) throws IOException {
    return FORMAT.open(file, Journal::new);
  }

  /** Reads a journal; see {@link LogFormat#read}. */
  public static Contents read(Path file) throws IOException {
    return FORMAT.read(file);
  }
}
