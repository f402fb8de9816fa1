package quarterturn.lesson;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Instant;
import java.util.Arrays;
import java.util.Random;
import quarterturn.lesson.store.WriterFile;
import quarterturn.lesson.store.WriterLog;

/** What is alike in a bench and a desk that do this and that: a wrong clock, and crashes. */
public abstract class RandomWriter {
  public final Random random;
  public final String writer;
  private final Path folder;
  private final int minutesOff;
  private int seconds;

  public RandomWriter(Path folder, String writer, Random random) {
    this.folder = folder;
    this.writer = writer;
    this.random = random;
    this.minutesOff = random.nextInt(21) - 10;
  }

  /** By the writer's own clock, which now and then is set back. */
  Instant now() {
    seconds += random.nextInt(30) == 0 ? -random.nextInt(300) : random.nextInt(20);
    return Demo.T.plusSeconds(60L * minutesOff + seconds);
  }

  boolean now(int outOf) {
    return random.nextInt(outOf) == 0;
  }

  WriterFile create(WriterLog.Part role) throws IOException {
    return WriterFile.create(folder, new WriterLog.Header(Demo.LESSON, writer, role));
  }

  /** The writer was killed while it wrote a line, and comes back. */
  WriterFile killedMidLine() throws IOException {
    byte[] line = WriterLog.FORMAT.event(1, new LessonEvent.Ticked(now()), "00000000").bytes();
    byte[] part = Arrays.copyOf(line, random.nextInt(line.length));
    Files.write(folder.resolve(writer + ".jsonl"), part, StandardOpenOption.APPEND);
    return WriterFile.open(folder, writer);
  }
}
