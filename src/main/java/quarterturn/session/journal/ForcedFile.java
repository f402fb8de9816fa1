package quarterturn.session.journal;

import java.io.Closeable;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/**
 * A file open for appending, by one process at a time. What was appended is on disk, all or none.
 */
public final class ForcedFile implements Closeable {
  /** No file of ours comes near this; a larger one is none, and is not read into memory. */
  private static final long MOST_BYTES = 1L << 24;

  private final Path file;
  private final FileChannel channel;
  private final JournalLock lock;
  private long end;
  private boolean torn;

  /**
   * Seen from tests, which hand in a channel to a full disk.
   *
   * @param end how much of the file stands
   */
  ForcedFile(Path file, FileChannel channel, JournalLock lock, long end) {
    this.file = file;
    this.channel = channel;
    this.lock = lock;
    this.end = end;
  }

  /**
   * Makes a new file; what it begins with is on disk when this returns.
   *
   * @throws java.nio.file.FileAlreadyExistsException when there is such a file
   */
  static ForcedFile create(Path file, byte[] first) throws IOException {
    ForcedFile made =
        locked(
            file, StandardOpenOption.CREATE_NEW, StandardOpenOption.READ, StandardOpenOption.WRITE);
    try {
      made.append(first);
      Folders.force(file.toAbsolutePath().getParent());
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
   * Opens a file to append to it, once it is said how much of it stands.
   *
   * @throws Journal.InUse when another process has it open
   */
  static ForcedFile open(Path file) throws IOException {
    return locked(file, StandardOpenOption.READ, StandardOpenOption.WRITE);
  }

  private static ForcedFile locked(Path file, StandardOpenOption... options) throws IOException {
    JournalLock lock = JournalLock.take(file);
    try {
      return new ForcedFile(file, FileChannel.open(file, options), lock, 0);
    } catch (IOException | RuntimeException e) {
      lock.close();
      throw e;
    }
  }

  /** Keeps so much of the file; what follows was cut short, and is removed. */
  void keep(long bytes) throws IOException {
    end = bytes;
    if (channel.size() > end) {
      cutBack();
    }
  }

  /** All of a file; needs no lock. */
  static byte[] bytes(Path file) throws IOException {
    if (Files.size(file) > MOST_BYTES) {
      throw new IOException(name(file) + " is far too large to be one of ours, and was not read");
    }
    return Files.readAllBytes(file);
  }

  static String name(Path file) {
    return String.valueOf(file.getFileName());
  }

  /**
   * Appends, all or nothing: it is on disk when this returns, and the file is as it was when it
   * throws.
   */
  void append(byte[] bytes) throws IOException {
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
