package quarterturn.procedure.read;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import quarterturn.unit.Printable;

/**
 * A folder's files of one kind, and a line for everything else that stands between them.
 *
 * @param files the plain files with the ending, in order; none is empty
 * @param notRead "not read: NAME, why" for the rest, in order; no hidden files of other kinds
 */
public record Strays(List<Path> files, List<String> notRead) {
  private static final String NOT_READ = "not read: ";

  /** Endings of what the program itself puts beside a file for a while, hidden. */
  private static final List<String> OWN = List.of(".lock", ".draft");

  public Strays {
    files = List.copyOf(files);
    notRead = List.copyOf(notRead);
  }

  /** Looks into a folder, which may not be there. */
  public static Strays in(Path folder, String ending) throws IOException {
    return in(folder, ending, file -> false, "its name does not end in " + ending);
  }

  /**
   * Looks into a folder, which may not be there.
   *
   * @param others whether something without the ending belongs there too
   * @param otherwise what is said of a file that neither has the ending nor belongs there
   */
  public static Strays in(Path folder, String ending, Predicate<Path> others, String otherwise)
      throws IOException {
    List<Path> files = new ArrayList<>();
    List<String> notRead = new ArrayList<>();
    if (Files.isDirectory(folder)) {
      List<Path> all;
      try (Stream<Path> listed = Files.list(folder)) {
        all = listed.sorted().toList();
      }
      for (Path file : all) {
        String name = String.valueOf(file.getFileName());
        String why = why(file, name, ending, otherwise);
        if (why == null) {
          files.add(file);
        } else if (!passedOver(name, ending) && (name.endsWith(ending) || !others.test(file))) {
          notRead.add(line(name, why));
        }
      }
    }
    return new Strays(files, notRead);
  }

  private static boolean passedOver(String name, String ending) {
    return name.startsWith(".")
        && (!name.contains(ending) || OWN.stream().anyMatch(name::endsWith));
  }

  private static @Nullable String why(Path file, String name, String ending, String otherwise) {
    if (name.endsWith(ending) && !name.startsWith(".")) {
      return why(file);
    }
    return Files.isDirectory(file)
        ? "it is a folder"
        : name.startsWith(".") ? "its name begins with a dot" : otherwise;
  }

  /**
   * Why what stands there can't be read, whatever its name; null for a file with something in it.
   */
  public static @Nullable String why(Path file) {
    BasicFileAttributes found;
    try {
      found = Files.readAttributes(file, BasicFileAttributes.class);
    } catch (IOException e) {
      return Files.isSymbolicLink(file) ? "it is a link that leads nowhere" : "it can't be read";
    }
    return found.isDirectory()
        ? "it is a folder"
        : !found.isRegularFile()
            ? "it is no plain file"
            : !Files.isReadable(file)
                ? "you may not read it"
                : found.size() == 0 ? "it is empty" : null;
  }

  /** Whether a notice is such a line, which says of nothing that it is wrong. */
  public static boolean is(String notice) {
    return notice.startsWith(NOT_READ);
  }

  /** The line for a file that is not read. */
  public static String line(String name, String why) {
    return NOT_READ + Printable.of(name) + ", " + Printable.of(why);
  }
}
