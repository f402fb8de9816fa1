package quarterturn.session.journal;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermissions;
import org.jspecify.annotations.Nullable;

/** Makes folders that are private to the user, and forces their entries and files to disk. */
public final class Folders {
  /** What a file system says that knows no forcing of folders. */
  private static final String CANT = "Invalid argument";

  private Folders() {}

  /**
   * Makes a folder and any missing ones above it, for the user alone where possible. They are on
   * disk when this returns.
   */
  public static void make(Path folder) throws IOException {
    if (Files.isDirectory(folder)) {
      return;
    }
    Path above = folder.toAbsolutePath().getParent();
    if (above != null) {
      make(above);
    }
    boolean posix = folder.getFileSystem().supportedFileAttributeViews().contains("posix");
    FileAttribute<?>[] mode =
        posix
            ? new FileAttribute<?>[] {
              PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rwx------"))
            }
            : new FileAttribute<?>[0];
    Files.createDirectories(folder, mode);
    force(above);
  }

  /**
   * Writes a file, new or in place of an old one. It is written under another name first and then
   * moved, so that nobody sees half a file.
   */
  public static void replace(Path file, byte[] contents) throws IOException {
    Path draft = file.resolveSibling("." + file.getFileName() + ".draft");
    try {
      try (FileChannel channel =
          FileChannel.open(
              draft,
              StandardOpenOption.CREATE,
              StandardOpenOption.TRUNCATE_EXISTING,
              StandardOpenOption.WRITE)) {
        ByteBuffer bytes = ByteBuffer.wrap(contents);
        while (bytes.hasRemaining()) {
          channel.write(bytes);
        }
        channel.force(true);
      }
      Files.move(draft, file, StandardCopyOption.ATOMIC_MOVE);
    } finally {
      Files.deleteIfExists(draft);
    }
    force(file.toAbsolutePath().getParent());
  }

  /**
   * Forces a folder's entries to disk, where the platform can.
   *
   * @throws IOException where it can and that failed: they may be lost
   */
  public static void force(@Nullable Path folder) throws IOException {
    if (folder == null) {
      return;
    }
    try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
      channel.force(true);
    } catch (AccessDeniedException e) {
      // Windows opens no folders; it keeps the names by itself.
      return;
    } catch (IOException e) {
      if (!CANT.equals(e.getMessage())) {
        throw e;
      }
    }
  }
}
