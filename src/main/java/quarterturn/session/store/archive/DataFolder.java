package quarterturn.session.store.archive;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * What stands in a data folder, by the names of its files; none is read. Hidden files are the
 * program's own passing ones, or the system's, and no part of it.
 *
 * @param kept the files that are sessions and instruments by their names, in order
 * @param strays what stands beside them and is none
 * @param bytes the length of all files that are kept
 */
public record DataFolder(List<Kept> kept, List<Stray> strays, long bytes) {
  public DataFolder {
    kept = List.copyOf(kept);
    strays = List.copyOf(strays);
  }

  /**
   * Something that is no session and no instrument by its name or its kind.
   *
   * @param path from the data folder
   * @param file whether it is a plain file, which may yet hold something
   * @param why it is none
   */
  public record Stray(Part part, String path, boolean file, String why) {}

  /** How many files it keeps in a part. */
  public long count(Part part) {
    return kept.stream().filter(one -> one.part() == part).count();
  }

  /**
   * Looks at some parts of a folder; what is not there is empty.
   *
   * @throws IOException where one of them is no folder or can't be listed
   */
  public static DataFolder at(Path data, Part... parts) throws IOException {
    List<Kept> kept = new ArrayList<>();
    List<Stray> strays = new ArrayList<>();
    long bytes = 0;
    for (Part part : parts) {
      for (Path file : listed(data.resolve(part.folder()))) {
        String name = String.valueOf(file.getFileName());
        Kept one = Kept.of(part, name);
        String not = not(file);
        if (one != null && not == null) {
          kept.add(one);
          bytes += size(file);
        } else {
          String why = not == null ? "no " + part.one() + " has such a name" : not;
          strays.add(new Stray(part, part.folder() + "/" + name, not == null, why));
        }
      }
    }
    return new DataFolder(kept, strays, bytes);
  }

  /** The files of a folder by name, without hidden ones; none where there is no such folder. */
  static List<Path> listed(Path folder) throws IOException {
    if (Files.notExists(folder, LinkOption.NOFOLLOW_LINKS)) {
      return List.of();
    }
    if (!Files.isDirectory(folder)) {
      throw new FileSystemException(folder.toString(), null, "it is no folder");
    }
    try (Stream<Path> all = Files.list(folder)) {
      return all.filter(file -> !String.valueOf(file.getFileName()).startsWith("."))
          .sorted()
          .toList();
    } catch (UncheckedIOException e) {
      throw new IOException(e.getMessage(), e);
    }
  }

  /** Why something is no plain file, or null where it is one. */
  private static @Nullable String not(Path file) {
    if (Files.isSymbolicLink(file)) {
      return "it is a link";
    }
    if (Files.isDirectory(file)) {
      return "it is a folder";
    }
    return Files.isRegularFile(file) ? null : "it is no plain file";
  }

  private static long size(Path file) {
    try {
      return Files.size(file);
    } catch (IOException e) {
      return 0; // gone since it was listed
    }
  }
}
