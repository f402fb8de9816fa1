package quarterturn.lesson.store;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;
import quarterturn.platform.Folders;

/**
 * A name whose striking has begun. A small file says so until all is done: where it is cut short,
 * the name may be gone from the list already and stand in other files, and once more it needs the
 * same number.
 *
 * @param number what stands for the name, or null where the student never came
 */
record Begun(String student, @Nullable String number) {
  private static final String FILE = ".striking";

  /** What has begun in a folder and is not done, or null. */
  static @Nullable Begun in(Path folder) throws IOException {
    try {
      List<String> lines = Files.readAllLines(folder.resolve(FILE), StandardCharsets.UTF_8);
      return lines.isEmpty()
          ? null
          : new Begun(lines.get(0), lines.size() > 1 ? lines.get(1) : null);
    } catch (NoSuchFileException e) {
      return null;
    }
  }

  void write(Path folder) throws IOException {
    String text = number == null ? student : student + "\n" + number;
    Folders.replace(folder.resolve(FILE), text.getBytes(StandardCharsets.UTF_8));
  }

  /** Takes the file away, since all is done. */
  static void done(Path folder) throws IOException {
    Files.deleteIfExists(folder.resolve(FILE));
    Folders.force(folder);
  }
}
