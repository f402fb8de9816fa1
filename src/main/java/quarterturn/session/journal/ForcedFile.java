package quarterturn.session.journal;

import java.io.Closeable;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Objects;
import java.util.zip.CRC32;
import org.jspecify.annotations.Nullable;
import quarterturn.platform.FileIdentity;
import quarterturn.platform.FileStamp;
import quarterturn.platform.Folders;

/**
 * A file open for appending in one process at a time. What was appended is on disk, all or none.
 */
public final class ForcedFile implements Closeable {
  /** Largest size in bytes of a file that is read; no file of ours gets near it. */
  public static final long MOST_BYTES = 1L << 24;

  private static final String GONE = "was deleted or moved";

  private final Path file;
  private final FileChannel channel;
  private final JournalLock lock;
  private final FileIdentity identity;
  private final CRC32 sum = new CRC32();
  private long end;
  private boolean torn;

  /** How the last look at the file found it whole; null where all of it has to be read again. */
  private @Nullable FileStamp left;

  /**
   * A file from its parts, to which nothing may be appended before {@link #keep} was called; tests
   * give a channel to a full disk.
   *
   * @param identity of the file at the path, taken once the channel was open. If the file was
   *     swapped in between, the first append finds that it has not grown.
   */
  ForcedFile(Path file, FileChannel channel, JournalLock lock, FileIdentity identity) {
    this.file = file;
    this.channel = channel;
    this.lock = lock;
    this.identity = identity;
  }

  /** Thrown where the open file is not what stands at its path; the message says what happened. */
  static final class Swapped extends IOException {
    private static final long serialVersionUID = 1L;

    Swapped(String what) {
      super(what);
    }
  }

  /**
   * Makes a new file; its first bytes are on disk when this returns.
   *
   * @throws java.nio.file.FileAlreadyExistsException when the file exists
   */
  static ForcedFile create(Path file, byte[] first) throws IOException {
    ForcedFile made =
        locked(
            file, StandardOpenOption.CREATE_NEW, StandardOpenOption.READ, StandardOpenOption.WRITE);
    try {
      made.append(first);
      Folders.force(folder(file));
      return made;
    } catch (IOException | RuntimeException e) {
      try (made) {
        made.channel.close();
        Files.deleteIfExists(file);
      }
      throw e;
    }
  }

  /**
   * Opens a file to append to it. Nothing may be appended before {@link #keep} was called.
   *
   * @throws Journal.InUse when another process has it open
   */
  static ForcedFile open(Path file) throws IOException {
    return locked(file, StandardOpenOption.READ, StandardOpenOption.WRITE);
  }

  private static ForcedFile locked(Path file, StandardOpenOption... options) throws IOException {
    JournalLock lock = JournalLock.take(file);
    try {
      FileChannel channel = FileChannel.open(file, options);
      try {
        return new ForcedFile(file, channel, lock, FileIdentity.of(file));
      } catch (IOException | RuntimeException e) {
        channel.close();
        throw e;
      }
    } catch (IOException | RuntimeException e) {
      lock.close();
      throw e;
    }
  }

  Path path() {
    return file;
  }

  /**
   * Keeps the valid part of what was read; bytes after it were cut short and are removed.
   *
   * @param valid length in bytes of the valid part
   */
  void keep(byte[] read, long valid) throws IOException {
    end = valid;
    sum.reset();
    sum.update(read, 0, (int) valid);
    if (channel.size() > end) {
      cutBack();
    }
  }

  /** The bytes of a file; takes no lock. */
  public static byte[] bytes(Path file) throws IOException {
    if (Files.size(file) > MOST_BYTES) {
      throw new IOException(name(file) + " is far too large to be one of ours, and was not read");
    }
    return Files.readAllBytes(file);
  }

  public static Path folder(Path file) {
    return Objects.requireNonNull(file.toAbsolutePath().getParent(), "a file stands in a folder");
  }

  static String name(Path file) {
    return String.valueOf(file.getFileName());
  }

  /**
   * Appends bytes, all or none: they are on disk when this returns, and the file is as before when
   * it throws.
   *
   * @throws Swapped where this is not the file at its path, or another program changed it
   */
  void append(byte[] bytes) throws IOException {
    try {
      appended(bytes);
    } catch (NoSuchFileException e) {
      throw new Swapped(GONE); // between two looks at it
    }
  }

  private void appended(byte[] bytes) throws IOException {
    FileStamp found = stands();
    if (end + bytes.length > MOST_BYTES) {
      throw new IOException(name(file) + " would grow too large; nothing was recorded");
    }
    if (torn) {
      cutBack();
      found = stands();
    }
    if (found.size() != end || !((left != null && found.same(left)) || allStands())) {
      throw new Swapped("was changed by another program");
    }
    try {
      left = null;
      ByteBuffer buffer = ByteBuffer.wrap(bytes);
      while (buffer.hasRemaining()) {
        channel.write(buffer, end + buffer.position());
      }
      // Before it is forced, which takes long: what is done to it meanwhile shows at the next line.
      found = stands();
      // Its length too: Java promises that with metadata only, POSIX (synchronized I/O data
      // integrity) and fdatasync(2) without as well, and for a longer file it takes as long.
      channel.force(true);
    } catch (Swapped e) {
      throw e;
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
    sum.update(bytes);
    if (found.size() != end) {
      throw new Swapped("was swapped for another file");
    }
    left = found.exact() ? found : null;
  }

  private FileStamp stands() throws IOException {
    FileStamp found;
    try {
      found = FileStamp.of(file);
    } catch (IOException e) {
      // A disk that can't be read now is no file that is gone.
      if (Files.notExists(folder(file)) || Files.isRegularFile(folder(file))) {
        throw new Swapped("was lost: its folder was moved or deleted");
      } else if (Files.notExists(file)) {
        throw new Swapped(GONE);
      }
      throw e;
    }
    if (found.folder()) {
      throw new Swapped("was swapped for a folder");
    } else if (!identity.same(found.identity())) {
      throw new Swapped("was swapped for another file");
    }
    return found;
  }

  private boolean allStands() throws IOException {
    CRC32 found = new CRC32();
    found.update(bytes(file));
    return found.getValue() == sum.getValue();
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
