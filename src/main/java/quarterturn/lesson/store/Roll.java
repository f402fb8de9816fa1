package quarterturn.lesson.store;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import quarterturn.lesson.LessonEvent;
import quarterturn.lesson.Order;
import quarterturn.lesson.Plan;
import quarterturn.procedure.UnreadableException;
import quarterturn.session.journal.LogFormat;
import quarterturn.unit.NotUnderstoodException;

/**
 * Who was in the lessons of a folder, in the order in which they came, which no later lesson and no
 * name that is struck changes.
 *
 * @param plans every plan in the folder, by its file, that of the last lesson first
 * @param came everybody who sat at a bench
 * @param struck the numbers that stand for names already
 */
record Roll(Map<Path, Plan> plans, List<WriterLog> logs, List<String> came, List<String> struck) {
  static Roll of(Path folder) throws IOException, UnreadableException {
    Map<Path, Plan> plans = new LinkedHashMap<>();
    plans.put(folder.resolve(LessonFolder.PLAN), PlanFile.in(folder));
    List<WriterLog> logs =
        logs(folder).stream()
            .sorted(Comparator.comparing(Roll::lesson).thenComparing(Roll::writer))
            .toList();
    for (String lesson : new TreeSet<>(logs.stream().map(Roll::lesson).toList())) {
      Path former = folder.resolve(lesson + ".yaml");
      if (!Files.notExists(former)) {
        plans.put(former, PlanFile.read(lesson + ".yaml", Files.readAllBytes(former)));
      }
    }
    return new Roll(
        plans,
        logs,
        all(logs, LessonEvent.Came.class).map(LessonEvent.Came::student).distinct().toList(),
        all(logs, LessonEvent.Struck.class).map(LessonEvent.Struck::student).distinct().toList());
  }

  /**
   * Every writer's file.
   *
   * @throws IOException where one can't be read, since who is in it counts
   */
  private static List<WriterLog> logs(Path folder) throws IOException {
    List<WriterLog> logs = new ArrayList<>();
    for (Path file : summed(folder, 1)) {
      try {
        logs.add(WriterLog.FORMAT.read(file));
      } catch (IOException e) {
        throw new IOException(file.getFileName() + " can't be read: " + e.getMessage(), e);
      }
    }
    logs.removeIf(log -> log.header() == null);
    return LessonFolder.standing(logs);
  }

  /**
   * The files of summed lines in a folder.
   *
   * @throws IOException where one can't be looked at
   */
  static List<Path> summed(Path folder, int depth) throws IOException {
    List<Path> out = new ArrayList<>();
    try (Stream<Path> all = Files.walk(folder, depth)) {
      for (Path file : all.sorted().toList()) {
        String name = String.valueOf(file.getFileName());
        if (name.endsWith(LogFormat.ENDING)
            && !name.startsWith(".")
            && Files.readAttributes(file, BasicFileAttributes.class).isRegularFile()) {
          out.add(file);
        }
      }
    } catch (UncheckedIOException e) {
      throw new IOException(e.getMessage(), e);
    }
    return out;
  }

  private static <E extends LessonEvent> Stream<E> all(List<WriterLog> logs, Class<E> kind) {
    return logs.stream().flatMap(log -> log.all(kind));
  }

  private static String lesson(WriterLog log) {
    return log.header() == null ? "" : log.header().lesson();
  }

  private static String writer(WriterLog log) {
    return log.header() == null ? "" : log.header().writer();
  }

  /** What stands for a student's name; null where the student never came. */
  @Nullable String number(String student) {
    int n = came.indexOf(student) + 1;
    // Somebody may have chosen such a name.
    while (n > 0 && came.contains("student " + n)) {
      n++;
    }
    return n == 0 ? null : "student " + n;
  }

  /**
   * Checks that a student's name can be struck.
   *
   * @throws NotUnderstoodException saying why not
   */
  void check(String student) {
    TreeSet<String> names = new TreeSet<>(came);
    plans.values().forEach(plan -> names.addAll(plan.students()));
    struck.forEach(names::remove);
    if (!finished()) {
      throw new NotUnderstoodException(
          "the lesson is not finished; end it at the desk first, then strike the name");
    } else if (!names.contains(student)) {
      List<String> there = new ArrayList<>(names);
      throw new NotUnderstoodException(
          there.isEmpty()
              ? "no name is left in this folder"
              : "nobody has that name here; there are " + String.join(", ", there));
    }
  }

  /** Whether the last lesson was ended, or no bench came to it yet. */
  private boolean finished() {
    String last = plans.values().iterator().next().lesson();
    List<WriterLog> of = logs.stream().filter(log -> lesson(log).equals(last)).toList();
    return of.stream().noneMatch(log -> log.all(LessonEvent.Joined.class).findAny().isPresent())
        || all(of, LessonEvent.Ordered.class)
            .anyMatch(o -> o.bench() == null && o.order() instanceof Order.End);
  }
}
