package quarterturn.session.journal;

import java.io.Closeable;
import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import org.jspecify.annotations.Nullable;

/**
 * Keeps other processes from opening a journal that is open.
 *
 * <p>The lock is on a separate file beside the journal. On POSIX systems a process loses its locks
 * on a file as soon as it closes <em>any</em> channel to it, so a lock on the journal itself would
 * be lost when the same process reads the journal for a listing; on Windows it would keep others
 * from reading. The lock's file is deleted when the lock is released; one left by a crash is
 * harmless, since the system frees the lock.
 */
public final class JournalLock implements Closeable {
  private final Path file;
  private final FileChannel channel;

  private JournalLock(Path file, FileChannel channel) {
    this.file = file;
    this.channel = channel;
  }

  /**
   * Takes the lock of a journal without waiting.
   *
   * @throws Journal.InUse when another window has it
   */
  public static JournalLock take(Path journal) throws IOException {
    String name = String.valueOf(journal.getFileName());
    Path file = journal.resolveSibling("." + name + ".lock");
    while (true) {
      FileChannel channel =
          FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
      if (tryLock(channel) == null) {
        channel.close();
        throw new Journal.InUse(name.replaceFirst("\\.jsonl$", ""));
      }
      if (Files.exists(file)) {
        return new JournalLock(file, channel);
      }
      // Its holder let go and removed the file between our opening it and locking it.
      channel.close();
    }
  }

  private static @Nullable FileLock tryLock(FileChannel channel) throws IOException {
    try {
      return channel.tryLock();
    } catch (OverlappingFileLockException e) {
      return null; // held by this very process
    } catch (IOException e) {
      channel.close();
      throw new IOException(
          "the folder can't lock files ("
              + e.getMessage()
              + "); choose another, for data of your own with --data DIR",
          e);
    }
  }

  @Override
  public void close() throws IOException {
    try (channel) {
      removeFile();
    }
  }

  private void removeFile() {
    try {
      Files.deleteIfExists(file);
    } catch (IOException e) {
      // Some systems keep a file that is open; without its lock it hinders nobody.
    }
  }
}
