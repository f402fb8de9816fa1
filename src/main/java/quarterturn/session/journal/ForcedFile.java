package quarterturn.session.journal;

import java.io.Closeable;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/**
 * A file open for appending in one process at a time. What was appended is on disk, all or none.
 */
public final class ForcedFile implements Closeable {
  /** Largest size in bytes of a file that is read; no file of ours gets near it. */
  private static final long MOST_BYTES = 1L << 24;

  private final Path file;
  private final FileChannel channel;
  private final JournalLock lock;
  private long end;
  private boolean torn;

  /**
   * A file from its parts; tests give a channel to a full disk.
   *
   * @param end length in bytes of the valid part of the file
   */
  ForcedFile(Path file, FileChannel channel, JournalLock lock, long end) {
    this.file = file;
    this.channel = channel;
    this.lock = lock;
    this.end = end;
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
      return new ForcedFile(file, FileChannel.open(file, options), lock, 0);
    } catch (IOException | RuntimeException e) {
      lock.close();
      throw e;
    }
  }

  /** Sets the length of the valid part; bytes after it were cut short and are removed. */
  void keep(long bytes) throws IOException {
    end = bytes;
    if (channel.size() > end) {
      cutBack();
    }
  }

  /** The bytes of a file; takes no lock. */
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
   * Appends bytes, all or none: they are on disk when this returns, and the file is as before when
   * it throws.
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
