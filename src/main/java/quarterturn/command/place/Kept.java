package quarterturn.command.place;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.Iterator;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import quarterturn.lesson.store.LessonFolder;
import quarterturn.platform.Links;
import quarterturn.session.journal.LogFormat;

/**
 * What the program itself keeps, and so never writes anything else over: whatever path leads to it.
 *
 * @param folders with data and with own procedures
 * @param files beside them, as that of settings
 */
public record Kept(List<Path> folders, List<Path> files) {
  private static final List<String> ENDINGS = List.of(LogFormat.ENDING, ".yaml");

  /** Folders of a data folder. */
  private static final List<String> PARTS = List.of("sessions", "instruments");

  /** How files of the program's own begin. */
  private static final List<String> HEADS =
      List.of(
          "{\"quarterturn\":1,\"",
          "# A lesson of quarterturn.",
          "# An instrument known to quarterturn.");

  private static final int HEAD = 64;

  /** How far above a file its lesson's folder can be: a bench has a data folder in it. */
  private static final int LEVELS = 3;

  public Kept {
    folders = List.copyOf(folders);
    files = List.copyOf(files);
  }

  /**
   * Whether a path leads to what the program keeps, or into a folder of it.
   *
   * @param real a path without links, to a file or to where one is to be
   */
  public boolean holds(Path real) throws IOException {
    for (Path folder : folders) {
      if (Files.isDirectory(folder) && real.startsWith(folder.toRealPath())) {
        return true;
      }
    }
    for (Path file : files) {
      if (Files.exists(file) && Files.exists(real) && Files.isSameFile(file, real)) {
        return true;
      }
    }
    return looksKept(real) || linked(real);
  }

  /** Whether it is one of a data or lesson folder's own files, of whichever folder. */
  private static boolean looksKept(Path real) throws IOException {
    String name = String.valueOf(real.getFileName());
    if (ENDINGS.stream().anyMatch(name::endsWith)) {
      Path folder = real.getParent();
      if (folder != null && PARTS.contains(String.valueOf(folder.getFileName()))) {
        return true;
      }
      for (int i = 0; i < LEVELS && folder != null; i++, folder = folder.getParent()) {
        if (Files.exists(folder.resolve(LessonFolder.PLAN))) {
          return true;
        }
      }
    }
    if (!Files.isRegularFile(real)) {
      return false;
    }
    try (InputStream in = Files.newInputStream(real)) {
      String head = new String(in.readNBytes(HEAD), StandardCharsets.UTF_8);
      return HEADS.stream().anyMatch(head::startsWith);
    }
  }

  /** Whether it is a second name of a file that is kept. */
  private boolean linked(Path real) throws IOException {
    Object key = key(real);
    if (key == null || Links.to(real) == 1) {
      return false;
    }
    for (Path file : files) {
      if (key.equals(key(file))) {
        return true;
      }
    }
    for (Path folder : folders) {
      if (Files.isDirectory(folder)) {
        try (Stream<Path> all = Files.walk(folder.toRealPath())) {
          for (Iterator<Path> each = all.iterator(); each.hasNext(); ) {
            if (key.equals(key(each.next()))) {
              return true;
            }
          }
        }
      }
    }
    return false;
  }

  private static @Nullable Object key(Path file) throws IOException {
    return Files.exists(file, LinkOption.NOFOLLOW_LINKS)
        ? Files.readAttributes(file, BasicFileAttributes.class, LinkOption.NOFOLLOW_LINKS).fileKey()
        : null;
  }
}
