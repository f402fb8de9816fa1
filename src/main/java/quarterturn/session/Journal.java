package quarterturn.session;

import java.io.ByteArrayOutputStream;
import java.io.Closeable;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One session on disk, open for appending: a header, then one event a line, as JSON. Nothing in it
 * is ever changed.
 *
 * <p>While it is open no other process can open it ({@link InUse}). Reading needs no lock.
 */
public final class Journal implements Closeable {
  /** No session comes near this; a larger file is not one, and is not read into memory. */
  private static final long MOST_BYTES = 1L << 24;

  private final Path file;
  private final FileChannel channel;
  private final JournalLock lock;
  private final Contents found;
  private long end;
  private int events;
  private String sum;
  private boolean torn;

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

  /** Seen from tests, which hand in a channel to a full disk. */
  Journal(Path file, FileChannel channel, JournalLock lock, JournalText.Scan scan) {
    this.file = file;
    this.channel = channel;
    this.lock = lock;
    this.found = scan.contents();
    this.end = scan.wholeBytes();
    this.events = scan.contents().events().size();
    this.sum = scan.sum();
  }

  /**
   * Makes a new journal; its header is on disk when this returns.
   *
   * @throws java.nio.file.FileAlreadyExistsException when there is such a file
   */
  public static Journal create(Path file, Header header) throws IOException {
    JournalLock lock = JournalLock.take(file);
    try {
      FileChannel channel =
          FileChannel.open(
              file,
              StandardOpenOption.CREATE_NEW,
              StandardOpenOption.READ,
              StandardOpenOption.WRITE);
      try {
        JournalText.Line line = JournalText.header(header);
        Contents contents = new Contents(header, List.of(), null, 0);
        Journal journal = new Journal(file, channel, lock, new JournalText.Scan(contents, 0, ""));
        journal.write(line.bytes());
        journal.sum = line.sum();
        Folders.force(file.toAbsolutePath().getParent());
        return journal;
      } catch (IOException | RuntimeException e) {
        channel.close();
        Files.deleteIfExists(file);
        throw e;
      }
    } catch (IOException | RuntimeException e) {
      lock.close();
      throw e;
    }
  }

  /**
   * Opens a journal to append to it. A last line that was cut short is removed from the file first;
   * {@link #found} says so.
   *
   * @throws InUse when another process has it open
   * @throws IOException when it is damaged, saying where and what to do
   */
  public static Journal open(Path file) throws IOException {
    JournalLock lock = JournalLock.take(file);
    try {
      FileChannel channel =
          FileChannel.open(file, StandardOpenOption.READ, StandardOpenOption.WRITE);
      try {
        JournalText.Scan scan = JournalText.scan(bytes(file), name(file));
        Contents contents = scan.contents();
        if (contents.damaged()) {
          throw new IOException(
              contents.notice()
                  + " Start a new session to go on; the log up to there can still be read.");
        }
        if (channel.size() > scan.wholeBytes()) {
          channel.truncate(scan.wholeBytes());
          channel.force(true);
        }
        return new Journal(file, channel, lock, scan);
      } catch (IOException | RuntimeException e) {
        channel.close();
        throw e;
      }
    } catch (IOException | RuntimeException e) {
      lock.close();
      throw e;
    }
  }

  /** Reads a journal; damage is told in the contents. */
  public static Contents read(Path file) throws IOException {
    return JournalText.scan(bytes(file), name(file)).contents();
  }

  private static byte[] bytes(Path file) throws IOException {
    if (Files.size(file) > MOST_BYTES) {
      throw new IOException(name(file) + " is far too large for a session, and was not read");
    }
    return Files.readAllBytes(file);
  }

  private static String name(Path file) {
    return String.valueOf(file.getFileName());
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
      JournalText.Line line = JournalText.event(n, event, last);
      text.writeBytes(line.bytes());
      last = line.sum();
    }
    write(text.toByteArray());
    sum = last;
    events = n;
  }

  /** Appends one event. */
  public void append(Event event) throws IOException {
    append(List.of(event));
  }

  private void write(byte[] bytes) throws IOException {
    if (torn) {
      cutBack();
    }
    if (channel.size() != end) {
      throw new IOException(
          name(file) + " was changed by another program while it was open; close it and resume");
    }
    try {
      ByteBuffer buffer = ByteBuffer.wrap(bytes);
      while (buffer.hasRemaining()) {
        channel.write(buffer, end + buffer.position());
      }
      channel.force(true);
    } catch (IOException e) {
      torn = true;
      try {
        cutBack();
      } catch (IOException again) {
        // The next write tries again before it adds anything.
        e.addSuppressed(again);
      }
      throw new IOException(
          "could not write to " + name(file) + " (" + e.getMessage() + "); nothing was recorded",
          e);
    }
    end += bytes.length;
  }

  private void cutBack() throws IOException {
    channel.truncate(end);
    channel.force(true);
    torn = false;
  }

  @Override
  public void close() throws IOException {
    try (lock) {
      channel.close();
    }
  }
}
