package quarterturn.lesson;

import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import org.jspecify.annotations.Nullable;
import quarterturn.lesson.store.WriterFile;
import quarterturn.lesson.store.WriterLog;
import quarterturn.lesson.teacher.DeskView;

/** A desk that releases, sometimes late or with a wrong value, holds, and sets levels. */
public final class RandomDesk extends RandomWriter {
  private @Nullable WriterFile file;

  public RandomDesk(Path folder, String writer, Random random) {
    super(folder, writer, random);
  }

  public void close() throws Exception {
    if (file != null) {
      file.close();
    }
  }

  public void move(List<WriterLog> seen) throws Exception {
    if (file == null) {
      file = create(WriterLog.Part.BOARD);
    } else if (now(20)) {
      file.close();
      file = killedMidLine();
    }
    if (now(40)) {
      file.append(List.of(new LessonEvent.Ordered(now(), null, new Order.Hold("Look here."))));
    }
    for (DeskView.Row row : DeskView.of(Demo.PLAN, seen).rows()) {
      String bench = row.bench().bench();
      for (Keep keep : row.releases()) {
        Value value = now(5) ? Demo.gap(9) : keep.value();
        Order release = new Order.Release(keep.ref(), value);
        file.append(List.of(new LessonEvent.Ordered(now(), bench, release)));
      }
      if (now(10)) {
        Level level = Level.values()[random.nextInt(4)];
        Order set = new Order.SetLevel("Ana", level, now(2));
        file.append(List.of(new LessonEvent.Ordered(now(), bench, set)));
      }
    }
  }
}
