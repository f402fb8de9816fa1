package quarterturn.platform;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.AccessDeniedException;
import java.nio.file.CopyOption;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Set;
import java.util.UUID;
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
    FileAttribute<?>[] mode =
        posix(folder)
            ? new FileAttribute<?>[] {
              PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rwx------"))
            }
            : new FileAttribute<?>[0];
    Files.createDirectories(folder, mode);
    force(above);
  }

  /**
   * Writes a file of the program's own, new or in place of an old one. It is written under another
   * name first and then moved, so that nobody sees half a file.
   */
  public static void replace(Path file, byte[] contents) throws IOException {
    Path draft = file.resolveSibling("." + file.getFileName() + ".draft");
    write(file, contents, draft, StandardOpenOption.CREATE, StandardCopyOption.ATOMIC_MOVE);
  }

  /**
   * Writes a file that is not the program's own, whole or not at all. The name it has meanwhile is
   * drawn, so that it is nobody else's.
   *
   * @param over whether it may take the place of an old one, whose permissions it then gets
   * @throws java.nio.file.FileAlreadyExistsException where one is there and may not be replaced
   */
  public static void write(Path file, byte[] contents, boolean over) throws IOException {
    Path draft = file.resolveSibling("." + UUID.randomUUID() + ".draft");
    CopyOption[] how = over ? new CopyOption[] {StandardCopyOption.ATOMIC_MOVE} : new CopyOption[0];
    write(file, contents, draft, StandardOpenOption.CREATE_NEW, how);
  }

  private static void write(
      Path file, byte[] contents, Path draft, StandardOpenOption making, CopyOption... how)
      throws IOException {
    try {
      try (FileChannel channel =
          FileChannel.open(
              draft, making, StandardOpenOption.TRUNCATE_EXISTING, StandardOpenOption.WRITE)) {
        if (Files.exists(file)) {
          allowAs(file, draft);
        }
        ByteBuffer bytes = ByteBuffer.wrap(contents);
        while (bytes.hasRemaining()) {
          channel.write(bytes);
        }
        channel.force(true);
      } catch (AccessDeniedException e) {
        throw new AccessDeniedException(file.toString());
      } catch (NoSuchFileException e) {
        throw new NoSuchFileException(file.toString());
      } catch (IOException e) {
        String why = e instanceof FileSystemException of ? of.getReason() : e.getMessage();
        throw new FileSystemException(file.toString(), null, why);
      }
      Files.move(draft, file, how);
    } finally {
      Files.deleteIfExists(draft);
    }
    force(file.toAbsolutePath().getParent());
  }

  /** Lets a file be read and written by whom another is, where the platform has it so. */
  private static void allowAs(Path file, Path draft) throws IOException {
    if (posix(file)) {
      Set<PosixFilePermission> those = Files.getPosixFilePermissions(file);
      if (!those.equals(Files.getPosixFilePermissions(draft))) {
        Files.setPosixFilePermissions(draft, those);
      }
    }
  }

  private static boolean posix(Path path) {
    return path.getFileSystem().supportedFileAttributeViews().contains("posix");
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
