package quarterturn.session.journal;

import java.io.Closeable;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ThreadLocalRandom;
import org.jspecify.annotations.Nullable;
import quarterturn.platform.FileIdentity;

/**
 * Keeps other windows from opening a journal that is open.
 *
 * <p>The lock is on a separate file beside the journal. On POSIX systems a process loses its locks
 * on a file as soon as it closes <em>any</em> channel to it, so a lock on the journal itself would
 * be lost when the same process reads the journal for a listing; on Windows it would keep others
 * from reading. For the same reason a process never opens the lock's file while it has the lock.
 *
 * <p>The lock's file is deleted when the lock is released; one left by a crash is harmless, since
 * the system frees the lock. It is deleted only by one who holds the lock on it, so a file that is
 * at its path once it is locked stays there. A file may be opened, though, and locked only after it
 * was deleted and another was made in its place; then the lock is worth nothing, and is tried anew.
 * No channel tells which file it is of, so it is told by the length, which its holder alone sets.
 */
public final class JournalLock implements Closeable {
  /** Lengths of a lock's file go up to this; a small one, for what copies whole folders. */
  private static final int LONGEST = 1 << 15;

  /** How often the lengths have to agree, so that they never do by chance. */
  private static final int LOOKS = 2;

  /**
   * The files whose locks this process has: by the system's rules they are the whole process's, so
   * this can't be kept by anything smaller.
   */
  private static final Set<Path> HELD = ConcurrentHashMap.newKeySet();

  private final Path file;
  private final Path held;
  private final FileChannel channel;
  private final FileIdentity identity;

  private JournalLock(Path file, Path held, FileChannel channel, FileIdentity identity) {
    this.file = file;
    this.held = held;
    this.channel = channel;
    this.identity = identity;
  }

  /**
   * Takes the lock of a journal without waiting.
   *
   * @throws Journal.InUse when another window has it
   */
  public static JournalLock take(Path journal) throws IOException {
    String name = ForcedFile.name(journal);
    Path file = journal.resolveSibling("." + name + ".lock");
    Path held = ForcedFile.folder(file).toRealPath().resolve(String.valueOf(file.getFileName()));
    if (!HELD.add(held)) {
      throw inUse(name);
    }
    JournalLock lock = null;
    try {
      while (lock == null) {
        lock = standing(name, file, held);
      }
      return lock;
    } finally {
      if (lock == null) {
        HELD.remove(held);
      }
    }
  }

  private static Journal.InUse inUse(String name) {
    return new Journal.InUse(name.replaceFirst("\\.jsonl$", ""));
  }

  /** The lock on the file at the path, or null where the file that was opened is not there now. */
  private static @Nullable JournalLock standing(String name, Path file, Path held)
      throws IOException {
    FileChannel channel =
        FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
    JournalLock lock = null;
    try {
      if (locked(channel) == null) {
        throw inUse(name);
      }
      if (stands(channel, file)) {
        lock = new JournalLock(file, held, channel, FileIdentity.of(file));
      }
      return lock;
    } catch (NoSuchFileException e) {
      return null; // deleted by its last holder
    } finally {
      if (lock == null) {
        channel.close();
      }
    }
  }

  private static @Nullable FileLock locked(FileChannel channel) throws IOException {
    try {
      return channel.tryLock();
    } catch (OverlappingFileLockException e) {
      return null; // held by this very process, under another name of the folder
    } catch (IOException e) {
      throw new IOException(
          "the folder can't lock files ("
              + e.getMessage()
              + "); choose another, for data of your own with --data DIR",
          e);
    }
  }

  /** Whether a locked file is the one at a path: what is done to its length is seen there. */
  private static boolean stands(FileChannel channel, Path file) throws IOException {
    for (int look = 0; look < LOOKS; look++) {
      int length = ThreadLocalRandom.current().nextInt(LONGEST);
      try {
        channel.truncate(length);
        channel.write(ByteBuffer.allocate(1), length);
      } catch (IOException e) {
        throw new IOException(
            "nothing can be written to " + ForcedFile.folder(file) + " (" + e.getMessage() + ")",
            e);
      }
      if (Files.size(file) != length + 1L) {
        return false;
      }
    }
    return true;
  }

  @Override
  public void close() throws IOException {
    try (channel) {
      removeFile();
    } finally {
      HELD.remove(held);
    }
  }

  private void removeFile() {
    try {
      // Whoever deleted it by hand may have let another window in.
      if (identity.same(FileIdentity.of(file))) {
        Files.deleteIfExists(file);
      }
    } catch (IOException e) {
      // Some systems keep a file that is open; without its lock it hinders nobody.
    }
  }
}
