package quarterturn.lesson.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import quarterturn.lesson.LessonEvent;
import quarterturn.lesson.Pace;
import quarterturn.procedure.Limits;

/** Measures a pace by the files of finished lessons. */
public final class PastPace {
  private PastPace() {}

  /** The pace of the lessons in a folder and in those beside it. */
  public static Pace near(Path folder, Limits.Clocks clocks) throws IOException {
    List<List<LessonEvent>> benches = new ArrayList<>();
    for (Path lesson : beside(folder.toAbsolutePath().normalize().getParent())) {
      for (WriterLog log : LessonFolder.read(lesson).logs()) {
        if (log.header() != null && log.header().role() == WriterLog.Part.BENCH) {
          benches.add(log.events());
        }
      }
    }
    return Pace.measured(benches, clocks);
  }

  private static List<Path> beside(@Nullable Path parent) throws IOException {
    if (parent == null || !Files.isDirectory(parent)) {
      return List.of();
    }
    try (Stream<Path> folders = Files.list(parent)) {
      return folders
          .filter(one -> Files.isRegularFile(one.resolve(LessonFolder.PLAN)))
          .sorted()
          .toList();
    }
  }
}
