package quarterturn.lesson.teacher;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import quarterturn.lesson.store.LessonFolder;
import quarterturn.lesson.store.Sign;
import quarterturn.lesson.store.WriterLog;
import quarterturn.session.journal.LogFormat;
import quarterturn.unit.Printable;

/**
 * Follows a lesson's folder. On a synced folder a file may be gone, cut short or closed for a
 * moment: what was seen of it stays until more of it is there.
 */
final class Following {
  private final Path folder;
  private final Map<String, WriterLog> known = new TreeMap<>();
  private final Map<String, Sign> signs = new HashMap<>();
  private final Map<String, Long> heard = new HashMap<>();
  private Set<String> halves = Set.of();
  private boolean begun;
  private long opened;

  Following(Path folder) {
    this.folder = folder;
  }

  /**
   * What is known of a folder after a look.
   *
   * @param heard when each writer's file was last seen to grow, or its sign of life to change
   */
  record Known(List<WriterLog> logs, Map<String, Heard> heard, List<String> notices) {}

  /**
   * Looks at the folder and reads what can be read now.
   *
   * @param now in nanoseconds of a clock that only goes forward
   */
  Known look(long now) {
    opened = begun ? opened : now;
    List<String> notices = new ArrayList<>();
    try {
      LessonFolder.Contents contents = LessonFolder.read(folder);
      notices.addAll(lasting(contents));
      List<String> notRead = contents.notRead();
      Map<String, WriterLog> read = new TreeMap<>();
      for (WriterLog log : contents.logs()) {
        if (log.header() != null) {
          read.put(log.header().writer(), log);
        }
      }
      known.forEach((writer, log) -> notices.addAll(missed(writer, log, read.get(writer))));
      read.forEach((writer, log) -> take(writer, log, now));
      Sign.in(folder).forEach((writer, sign) -> take(writer, sign, now));
      notices.addAll(notRead);
      begun = true;
    } catch (IOException e) {
      String why = e.getMessage() == null ? e.getClass().getSimpleName() : e.getMessage();
      notices.add(
          "The folder can't be read right now (" + Printable.of(why) + "); it is tried again.");
    }
    return new Known(List.copyOf(known.values()), heard(now), notices);
  }

  private Map<String, Heard> heard(long now) {
    Map<String, Heard> out = new HashMap<>();
    for (String writer : known.keySet()) {
      Long at = heard.get(writer);
      Sign sign = signs.get(writer);
      Duration ago = Duration.ofNanos(now - (at == null ? opened : at));
      out.put(writer, new Heard(ago, at != null, sign == null ? null : sign.at()));
    }
    return out;
  }

  /**
   * The notices to show: an unfinished last line is told of only when the next look finds it
   * unchanged.
   */
  private List<String> lasting(LessonFolder.Contents contents) {
    Set<String> now = new HashSet<>();
    for (WriterLog log : contents.logs()) {
      if (log.notice() != null && log.damagedAtLine() == 0) {
        now.add(Printable.of(log.notice()));
      }
    }
    Set<String> before = halves;
    halves = now;
    return contents.notices().stream().filter(n -> !now.contains(n) || before.contains(n)).toList();
  }

  private static List<String> missed(String writer, WriterLog before, @Nullable WriterLog now) {
    String name = Printable.of(writer + LogFormat.ENDING);
    if (now == null) {
      return List.of(name + " is not there right now; what was seen of it stands here.");
    }
    return now.events().size() < before.events().size()
        ? List.of(name + " is shorter than it was; what was seen of it stands here.")
        : List.of();
  }

  private void take(String writer, Sign sign, long now) {
    Sign before = signs.put(writer, sign);
    if (begun && !sign.equals(before)) {
      heard.put(writer, now);
    }
  }

  private void take(String writer, WriterLog log, long now) {
    WriterLog before = known.get(writer);
    int events = before == null ? -1 : before.events().size();
    if (log.events().size() > events && begun) {
      heard.put(writer, now);
    }
    if (log.events().size() >= events) {
      known.put(writer, log);
    }
  }
}
