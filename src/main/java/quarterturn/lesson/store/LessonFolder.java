package quarterturn.lesson.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import quarterturn.session.journal.LogFormat;
import quarterturn.unit.Printable;

/**
 * A lesson's folder: {@code lesson.yaml} and one {@code WRITER.jsonl} of each bench and desk. It
 * may be shared or synced, since each file has one writer only.
 */
public final class LessonFolder {
  public static final String PLAN = "lesson.yaml";

  private LessonFolder() {}

  /**
   * What a folder holds.
   *
   * @param logs of every writer of every lesson in it, by the writer's id
   * @param notices what is wrong with files, for people
   */
  public record Contents(List<WriterLog> logs, List<String> notices) {}

  /** Reads every writer's file; needs no lock, and a file that can't be read is told of. */
  public static Contents read(Path folder) throws IOException {
    List<WriterLog> logs = new ArrayList<>();
    List<String> notices = new ArrayList<>();
    for (Path file : files(folder)) {
      String name = String.valueOf(file.getFileName());
      try {
        WriterLog log = WriterLog.FORMAT.read(file);
        if (log.notice() != null) {
          notices.add(Printable.of(log.notice()));
        }
        if (log.header() != null) {
          logs.add(log);
        }
      } catch (IOException e) {
        notices.add(Printable.of(name + " can't be read: " + e.getMessage()));
      }
    }
    return new Contents(standing(logs), notices);
  }

  /** The files that no other one stands for. */
  static List<WriterLog> standing(List<WriterLog> logs) {
    return logs.stream().filter(log -> logs.stream().noneMatch(o -> o.replaces(log))).toList();
  }

  /**
   * Length in bytes of each writer's file, by its name; one of the same length has nothing new.
   *
   * @param but a writer whose file is passed over
   */
  public static Map<String, Long> lengths(Path folder, String but) throws IOException {
    Map<String, Long> out = new TreeMap<>();
    for (Path file : files(folder)) {
      String name = String.valueOf(file.getFileName());
      if (!name.equals(but + LogFormat.ENDING)) {
        out.put(name, Files.size(file));
      }
    }
    return out;
  }

  private static List<Path> files(Path folder) throws IOException {
    try (Stream<Path> all = Files.list(folder)) {
      return all.filter(LessonFolder::isWriters).sorted(Comparator.naturalOrder()).toList();
    }
  }

  private static boolean isWriters(Path file) {
    String name = String.valueOf(file.getFileName());
    return name.endsWith(LogFormat.ENDING) && !name.startsWith(".") && Files.isRegularFile(file);
  }
}
