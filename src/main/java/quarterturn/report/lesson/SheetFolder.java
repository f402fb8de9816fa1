package quarterturn.report.lesson;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import quarterturn.platform.Folders;

/** Writes a lesson's sheets, never over a file that exists. */
public final class SheetFolder {
  private static final int MOST = 1000;
  private static final String SHEETS = "sheets-";

  private SheetFolder() {}

  /**
   * Writes the sheets into a new folder beside the benches' files: {@code sheets-DESK}, with a
   * number added where that exists.
   */
  public static Path write(Path lesson, String desk, List<LessonSheets.File> files)
      throws IOException {
    for (int n = 1; n < MOST; n++) {
      Path folder = lesson.resolve(SHEETS + desk + (n == 1 ? "" : "-" + n));
      // The sheets of an earlier time stay; these get the next number.
      if (!Files.exists(folder, LinkOption.NOFOLLOW_LINKS)) {
        into(folder, files);
        return folder;
      }
    }
    throw new IOException("there are too many folders with sheets; move some elsewhere");
  }

  /**
   * Writes what stands in the folders of sheets beside the benches' files anew, as their lesson
   * stands now.
   *
   * @param sheets those of each lesson, by its id
   * @return the folders whose lesson is not known, which stay as they are
   */
  public static List<Path> anew(Path lesson, Map<String, List<LessonSheets.File>> sheets)
      throws IOException {
    List<Path> unknown = new ArrayList<>();
    for (Path folder : folders(lesson)) {
      Path page = folder.resolve("class.txt");
      String said = Files.isRegularFile(page) ? Files.readString(page) : "";
      List<LessonSheets.File> files =
          sheets.entrySet().stream()
              .filter(of -> said.matches("(?s).*Id: +" + Pattern.quote(of.getKey()) + "\\s.*"))
              .map(Map.Entry::getValue)
              .findFirst()
              .orElse(List.of());
      if (files.isEmpty()) {
        unknown.add(folder);
      } else {
        instead(folder, files);
      }
    }
    return unknown;
  }

  private static List<Path> folders(Path lesson) throws IOException {
    try (Stream<Path> all = Files.list(lesson)) {
      return all.filter(
              path -> (path.getFileName() + "").startsWith(SHEETS) && Files.isDirectory(path))
          .sorted()
          .toList();
    }
  }

  /** Writes files, and deletes the sheets that a folder held besides. */
  private static void instead(Path folder, List<LessonSheets.File> files) throws IOException {
    Set<String> names = new HashSet<>();
    for (LessonSheets.File file : files) {
      Folders.replace(folder.resolve(file.name()), bytes(file));
      names.add(file.name());
    }
    try (Stream<Path> all = Files.list(folder)) {
      for (Path path : all.toList()) {
        String name = path.getFileName() + "";
        if (name.matches("\\d\\d-[a-z0-9-]+\\.[a-z]+") && !names.contains(name)) {
          Files.delete(path);
        }
      }
    }
  }

  /**
   * Writes the sheets into a folder, which is made if it does not exist: all of them or none.
   *
   * @throws IOException saying what to do
   */
  public static void into(Path folder, List<LessonSheets.File> files) throws IOException {
    List<Path> all = files.stream().map(file -> folder.resolve(file.name())).toList();
    for (Path path : all) {
      if (Files.exists(path, LinkOption.NOFOLLOW_LINKS)) {
        throw standing(path, null);
      }
    }
    Deque<Path> made = new ArrayDeque<>();
    try {
      make(folder, made);
      for (int i = 0; i < all.size(); i++) {
        Folders.write(all.get(i), bytes(files.get(i)), false);
        made.push(all.get(i));
      }
    } catch (IOException e) {
      for (Path path : made) {
        Files.deleteIfExists(path);
      }
      throw e instanceof FileAlreadyExistsException there
          ? standing(Path.of(there.getFile()), e)
          : e;
    }
  }

  /** Makes a folder and those above it, and keeps which were made, the last one first. */
  private static void make(Path folder, Deque<Path> made) throws IOException {
    Path above = folder.toAbsolutePath().getParent();
    if (!Files.isDirectory(folder)) {
      if (above != null) {
        make(above, made);
      }
      Files.createDirectory(folder);
      made.push(folder);
    }
  }

  private static IOException standing(Path path, @Nullable Exception cause) {
    return new IOException(path + " is there already; name another folder with --out", cause);
  }

  private static byte[] bytes(LessonSheets.File file) {
    return file.text().getBytes(StandardCharsets.UTF_8);
  }
}
