package quarterturn.session.store.archive;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/** A file that is written whole beside its place before it is put there. */
final class Draft {
  private Draft() {}

  /** Writes a draft in place of an older one; its bytes are on disk when this returns. */
  static void write(Path draft, byte[] bytes) throws IOException {
    // Never into the older one: where a crash left it, it can be the same file as what it became.
    Files.deleteIfExists(draft);
    try (FileChannel channel =
        FileChannel.open(draft, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
      ByteBuffer buffer = ByteBuffer.wrap(bytes);
      while (buffer.hasRemaining()) {
        channel.write(buffer);
      }
      channel.force(true);
    }
  }

  /**
   * Puts a draft at its place.
   *
   * @throws FileAlreadyExistsException where something stands there, which stays as it is
   */
  static void place(Path draft, Path file) throws IOException {
    try {
      // A second name is given only where none stands, at once and whole; a move might replace.
      Files.createLink(file, draft);
    } catch (FileAlreadyExistsException e) {
      throw e;
    } catch (IOException | UnsupportedOperationException e) {
      Files.move(draft, file); // a system without second names
    }
    Files.deleteIfExists(draft);
  }
}
