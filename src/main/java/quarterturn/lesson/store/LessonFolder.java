package quarterturn.lesson.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import quarterturn.procedure.read.Strays;
import quarterturn.session.journal.LogFormat;
import quarterturn.unit.Printable;

/**
 * A lesson's folder: {@code lesson.yaml} and one {@code WRITER.jsonl} of each bench and desk. It
 * may be shared or synced, since each file has one writer only.
 */
public final class LessonFolder {
  public static final String PLAN = "lesson.yaml";

  /** A plan of an earlier lesson: its id, which begins with its day. */
  private static final Pattern FORMER = Pattern.compile("\\d{4}-\\d\\d-\\d\\d-[a-z0-9-]+\\.yaml");

  private static final Pattern SHEETS = Pattern.compile("sheets-.+");

  private LessonFolder() {}

  /**
   * What a folder holds.
   *
   * @param logs of every writer of every lesson in it, by the writer's id
   * @param notices what is wrong with files, for people
   * @param notRead a line for everything else in it: "not read: NAME, why"
   */
  public record Contents(List<WriterLog> logs, List<String> notices, List<String> notRead) {}

  /** Reads every writer's file; needs no lock, and a file that can't be read is told of. */
  public static Contents read(Path folder) throws IOException {
    List<WriterLog> logs = new ArrayList<>();
    List<String> notices = new ArrayList<>();
    Strays found = found(folder);
    List<String> notRead = new ArrayList<>(found.notRead());
    for (Path file : found.files()) {
      String name = String.valueOf(file.getFileName());
      try {
        WriterLog log = WriterLog.FORMAT.read(file);
        if (log.header() == null) {
          notRead.add(Strays.line(name, why(log, name)));
          continue;
        }
        if (log.notice() != null) {
          notices.add(Printable.of(log.notice()));
        }
        logs.add(log);
      } catch (IOException e) {
        notices.add(Printable.of(name + " can't be read: " + e.getMessage()));
      }
    }
    notRead.sort(Comparator.naturalOrder());
    return new Contents(standing(logs), notices, notRead);
  }

  /** Why a file's first line can't be used. */
  private static String why(WriterLog log, String name) {
    String notice = String.valueOf(log.notice());
    String begins = "line 1 of " + name + ": ";
    int end = notice.indexOf(". Nothing");
    return notice.startsWith(begins) && end > 0
        ? notice.substring(begins.length(), end)
        : "it has no whole first line";
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
    for (Path file : found(folder).files()) {
      String name = String.valueOf(file.getFileName());
      if (!name.equals(but + LogFormat.ENDING)) {
        out.put(name, Files.size(file));
      }
    }
    return out;
  }

  private static Strays found(Path folder) throws IOException {
    // A folder that is away for a while is told of, as one that can't be listed.
    Files.readAttributes(folder, BasicFileAttributes.class);
    return Strays.in(
        folder, LogFormat.ENDING, LessonFolder::belongs, "it is no part of a lesson by its name");
  }

  /** Whether something beside the writers' files is a plan, a sign of life, sheets or a bench's. */
  private static boolean belongs(Path file) {
    String name = String.valueOf(file.getFileName());
    boolean plain = Strays.why(file) == null;
    return Files.isDirectory(file)
        ? SHEETS.matcher(name).matches()
            || Files.isDirectory(file.resolve("sessions"))
            || Files.isDirectory(file.resolve("instruments"))
        : plain && (name.equals(PLAN) || FORMER.matcher(name).matches() || Sign.is(name));
  }
}
