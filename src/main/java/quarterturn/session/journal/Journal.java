package quarterturn.session.journal;

import java.io.ByteArrayOutputStream;
import java.io.Closeable;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import quarterturn.session.Event;

/**
 * One session on disk, open for appending: a header, then one event a line, as JSON. Nothing in it
 * is ever changed.
 *
 * <p>While it is open no other process can open it ({@link InUse}). Reading needs no lock.
 */
public final class Journal implements Closeable {
  private final ForcedFile file;
  private final Contents found;
  private int events;
  private String sum;

  /** What the first line names. */
  public record Header(String session, String procedure, int revision, String digest) {}

  /**
   * What a file says.
   *
   * @param header null where the first line can't be used
   * @param events those that stand, oldest first
   * @param notice what is wrong with the file in a sentence for the user, or null
   * @param damagedAtLine the first line that can't be used, counted from one; 0 where the file is
   *     sound or only its last line was cut short
   */
  public record Contents(
      @Nullable Header header, List<Event> events, @Nullable String notice, int damagedAtLine) {
    public Contents {
      events = List.copyOf(events);
    }

    /** Whether nothing more may be appended. */
    public boolean damaged() {
      return damagedAtLine > 0;
    }
  }

  /** The session is open elsewhere. */
  public static final class InUse extends IOException {
    private static final long serialVersionUID = 1L;

    InUse(String session) {
      super("session " + session + " is open in another window; close it there first");
    }
  }

  /** Seen from tests, which hand in a file on a full disk. */
  Journal(ForcedFile file, JournalText.Scan scan) {
    this.file = file;
    this.found = scan.contents();
    this.events = scan.contents().events().size();
    this.sum = scan.sum();
  }

  /**
   * Makes a new journal; its header is on disk when this returns.
   *
   * @throws java.nio.file.FileAlreadyExistsException when there is such a file
   */
  public static Journal create(Path file, Header header) throws IOException {
    SummedLines.Line line = JournalText.header(header);
    Contents contents = new Contents(header, List.of(), null, 0);
    return new Journal(
        ForcedFile.create(file, line.bytes()), new JournalText.Scan(contents, 0, line.sum()));
  }

  /**
   * Opens a journal to append to it. A last line that was cut short is removed from the file first;
   * {@link #found} says so.
   *
   * @throws InUse when another process has it open
   * @throws IOException when it is damaged, saying where and what to do
   */
  public static Journal open(Path file) throws IOException {
    List<JournalText.Scan> read = new ArrayList<>();
    ForcedFile opened =
        ForcedFile.open(
            file,
            bytes -> {
              JournalText.Scan scan = JournalText.scan(bytes, ForcedFile.name(file));
              if (scan.contents().damaged()) {
                throw new IOException(
                    scan.contents().notice()
                        + " Start a new session to go on; the log up to there can still be read.");
              }
              read.add(scan);
              return scan.wholeBytes();
            });
    return new Journal(opened, read.get(0));
  }

  /** Reads a journal; damage is told in the contents. */
  public static Contents read(Path file) throws IOException {
    return JournalText.scan(ForcedFile.bytes(file), ForcedFile.name(file)).contents();
  }

  /** What stood in the file when it was opened. */
  public Contents found() {
    return found;
  }

  /**
   * Appends events, all or none: they are on disk when this returns, and the file is as it was when
   * it throws.
   */
  public void append(List<Event> more) throws IOException {
    ByteArrayOutputStream text = new ByteArrayOutputStream();
    String last = sum;
    int n = events;
    for (Event event : more) {
      n++;
      SummedLines.Line line = JournalText.event(n, event, last);
      text.writeBytes(line.bytes());
      last = line.sum();
    }
    file.append(text.toByteArray());
    sum = last;
    events = n;
  }

  /** Appends one event. */
  public void append(Event event) throws IOException {
    append(List.of(event));
  }

  @Override
  public void close() throws IOException {
    file.close();
  }
}
