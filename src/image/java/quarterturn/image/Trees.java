package quarterturn.image;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** Folders with all that is in them. */
final class Trees {
  private Trees() {}

  /** Everything in a folder, itself first, each folder before what is in it, by name. */
  static List<Path> in(Path folder) throws IOException {
    try (Stream<Path> all = Files.walk(folder)) {
      return all.sorted().toList();
    }
  }

  static void delete(Path folder) throws IOException {
    if (Files.exists(folder, LinkOption.NOFOLLOW_LINKS)) {
      for (Path path : in(folder).stream().sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(path);
      }
    }
  }

  static long bytes(Path folder) throws IOException {
    long bytes = 0;
    for (Path path : in(folder)) {
      bytes += Files.isRegularFile(path) ? Files.size(path) : 0;
    }
    return bytes;
  }

  /** The beginning of a day. */
  static FileTime begin(String date) {
    return FileTime.from(LocalDate.parse(date).atStartOfDay().toInstant(ZoneOffset.UTC));
  }

  /** Sets the time of all to the beginning of a day. */
  static void settle(Path folder, String date) throws IOException {
    for (Path path : in(folder)) {
      Files.setLastModifiedTime(path, begin(date));
    }
  }
}
