package quarterturn.command.place;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import quarterturn.platform.Folders;

/**
 * A file that a person named for a command to write.
 *
 * @param option by which it was named
 * @param force whether a file that is there may be written over; null where no option says it may
 * @param kept what it may never be
 */
public record Export(String option, Path file, @Nullable Boolean force, Kept kept) {
  /**
   * Refuses a folder into which the program must not write.
   *
   * @throws IOException saying what to do
   */
  public static void checkFolder(String option, Path folder, Kept kept) throws IOException {
    boolean there = Place.isThere(option, folder, "name another folder");
    Path at = folder.toAbsolutePath().normalize();
    while (!there && !Files.isDirectory(at)) {
      at = Objects.requireNonNull(at.getParent(), "a root is there");
    }
    if (kept.holds(there ? folder.toRealPath() : at.toRealPath())) {
      throw keptAlready(option, folder, "folder");
    }
  }

  /**
   * Refuses a file that can't be written or must not be.
   *
   * @throws IOException saying what to do
   */
  public void check() throws IOException {
    if (file.toString().isEmpty()) {
      throw new IOException(option + ": no file is named");
    }
    if (Files.isDirectory(file)) {
      throw new IOException(option + ": " + file + " is a folder; name a file");
    }
    boolean there = Files.exists(file);
    if (!there && Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
      throw new IOException(option + ": " + file + " is a link that leads nowhere; name a file");
    }
    Path folder =
        Objects.requireNonNull(file.toAbsolutePath().getParent(), "a file is in a folder");
    if (!Files.isDirectory(folder)) {
      throw new IOException(option + ": there is no folder to put " + file + " in; make it first");
    }
    if (device()) {
      if (!Boolean.TRUE.equals(force)) {
        throw standing();
      }
      return;
    }
    if (kept.holds(real())) {
      throw keptAlready(option, file, "file");
    }
    if (there && !Boolean.TRUE.equals(force)) {
      throw standing();
    }
    if (there && !Files.isWritable(file)) {
      throw new IOException(option + ": " + file + " is not to be written over; name another file");
    }
  }

  private static IOException keptAlready(String option, Path at, String what) {
    return new IOException(
        option + ": " + at + " belongs to what the program keeps; name another " + what);
  }

  private IOException standing() {
    return new IOException(
        option
            + ": "
            + file
            + " is there already; choose another name"
            + (force == null ? "" : ", or add --force"));
  }

  /** Whether it is neither a file nor missing: what is written goes straight through it. */
  private boolean device() {
    return Files.exists(file) && !Files.isRegularFile(file);
  }

  /** The file without links on the way to it, or where it is to be. */
  private Path real() throws IOException {
    Path whole = file.toAbsolutePath();
    return Files.exists(file)
        ? file.toRealPath()
        : Objects.requireNonNull(whole.getParent(), "a file is in a folder")
            .toRealPath()
            .resolve(Objects.requireNonNull(whole.getFileName(), "a file has a name"));
  }

  /**
   * Writes the file, whole or not at all.
   *
   * @throws IOException saying what to do
   */
  public void write(String text) throws IOException {
    check();
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    try {
      if (device()) {
        through(bytes);
      } else {
        Folders.write(real(), bytes, Boolean.TRUE.equals(force));
      }
    } catch (FileAlreadyExistsException e) {
      throw standing();
    } catch (IOException e) {
      throw Place.unwritable(option, file, "file", e);
    }
  }

  private void through(byte[] bytes) throws IOException {
    try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
      ByteBuffer left = ByteBuffer.wrap(bytes);
      while (left.hasRemaining()) {
        channel.write(left);
      }
    }
  }
}
