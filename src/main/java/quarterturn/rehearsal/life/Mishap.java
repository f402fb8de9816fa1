package quarterturn.rehearsal.life;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import quarterturn.unit.Worded;

/** What may befall a session's file. */
enum Mishap implements Worded {
  /** One byte after the first two lines is another. */
  SPOILED,
  /** The end is missing, from the middle of a line on. */
  CUT,
  /** Nothing in it can be read. */
  GARBLED,
  /** A folder stands in its place. */
  REPLACED,
  /** A copy stands beside it. */
  COPIED,
  /** A copy stands beside it, and the file itself is gone. */
  RENAMED,
  /** It is gone. */
  LOST;

  /** The session files in a folder, in order. */
  static List<Path> files(Path folder) {
    if (!Files.isDirectory(folder)) {
      return List.of();
    }
    try (Stream<Path> files = Files.list(folder)) {
      return files
          .filter(file -> file.toString().endsWith(".jsonl") && Files.isRegularFile(file))
          .sorted()
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Lets it happen to a file; false where the file is too short for it. */
  boolean befall(Path file, SplittableRandom random) throws IOException {
    byte[] bytes = Files.readAllBytes(file);
    int lines = secondLineEnd(bytes);
    String copy = String.valueOf(file.getFileName()).replace(".jsonl", " (a copy).jsonl");
    if (lines <= 0 || lines + 2 >= bytes.length || Files.exists(file.resolveSibling(copy))) {
      return false;
    }
    int at = lines + 1 + random.nextInt(bytes.length - lines - 2);
    FileTime written = Files.getLastModifiedTime(file);
    switch (this) {
      case SPOILED -> {
        bytes[at] ^= 1;
        Files.write(file, bytes);
      }
      case CUT -> Files.write(file, Arrays.copyOf(bytes, bytes[at - 1] == '\n' ? at + 1 : at));
      case GARBLED -> Files.write(file, "nothing of a session\n".getBytes(StandardCharsets.UTF_8));
      case REPLACED -> {
        Files.delete(file);
        Files.createDirectory(file);
      }
      case COPIED -> Files.copy(file, file.resolveSibling(copy));
      case RENAMED -> Files.move(file, file.resolveSibling(copy));
      case LOST -> Files.delete(file);
    }
    if (Files.exists(file)) {
      // As a tool that copies files does it.
      Files.setLastModifiedTime(file, written);
    }
    return true;
  }

  private static int secondLineEnd(byte[] bytes) {
    int seen = 0;
    for (int i = 0; i < bytes.length; i++) {
      seen += bytes[i] == '\n' ? 1 : 0;
      if (seen == 2) {
        return i;
      }
    }
    return -1;
  }
}
