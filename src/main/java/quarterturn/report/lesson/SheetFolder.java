package quarterturn.report.lesson;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;

/** Writes a lesson's sheets, never over a file that exists. */
public final class SheetFolder {
  private static final int MOST = 1000;

  private SheetFolder() {}

  /**
   * Writes the sheets into a new folder beside the benches' files: {@code sheets-DESK}, with a
   * number added where that exists.
   */
  public static Path write(Path lesson, String desk, List<LessonSheets.File> files)
      throws IOException {
    for (int n = 1; n < MOST; n++) {
      Path folder = lesson.resolve("sheets-" + desk + (n == 1 ? "" : "-" + n));
      try {
        Files.createDirectory(folder);
        into(folder, files);
        return folder;
      } catch (FileAlreadyExistsException e) {
        // The sheets of an earlier time stay; these get the next number.
      }
    }
    throw new IOException("there are too many folders with sheets; move some elsewhere");
  }

  /** Writes the sheets into a folder, which is made if it does not exist. */
  public static void into(Path folder, List<LessonSheets.File> files) throws IOException {
    Files.createDirectories(folder);
    for (LessonSheets.File file : files) {
      Path path = folder.resolve(file.name());
      try {
        Files.writeString(path, file.text(), StandardCharsets.UTF_8, StandardOpenOption.CREATE_NEW);
      } catch (FileAlreadyExistsException e) {
        throw new IOException(path + " is there already; name another folder with --out", e);
      }
    }
  }
}
