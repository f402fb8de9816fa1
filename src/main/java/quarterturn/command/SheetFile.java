package quarterturn.command;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/** Writes a sheet where the user said, in UTF-8. */
final class SheetFile {
  private SheetFile() {}

  /**
   * Writes {@code text}.
   *
   * @param force whether a file that is there may be written over
   * @throws IOException saying what to do
   */
  static void write(Path file, String text, boolean force) throws IOException {
    if (Files.isDirectory(file)) {
      throw new IOException("--out: " + file + " is a folder; name a file");
    }
    try {
      Files.writeString(
          file,
          text,
          StandardCharsets.UTF_8,
          StandardOpenOption.WRITE,
          force ? StandardOpenOption.CREATE : StandardOpenOption.CREATE_NEW,
          StandardOpenOption.TRUNCATE_EXISTING);
    } catch (FileAlreadyExistsException e) {
      throw new IOException(
          "--out: " + file + " is there already; choose another name, or add --force", e);
    } catch (NoSuchFileException e) {
      throw new IOException("--out: there is no folder to put " + file + " in; make it first", e);
    }
  }
}
