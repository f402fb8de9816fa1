package quarterturn.lesson.student;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import quarterturn.lesson.store.Sign;

/** Writes a bench's sign of life now and then. A folder that is away for a while has none. */
final class Signing {
  private static final Duration EVERY = Duration.ofSeconds(10);

  private final Path folder;
  private int count;
  private long last;

  Signing(Path folder) {
    this.folder = folder;
  }

  /** Writes the sign where it is time; nothing else waits for it. */
  void look(String bench, Instant now) {
    if (count > 0 && System.nanoTime() - last < EVERY.toNanos()) {
      return;
    }
    last = System.nanoTime();
    try {
      new Sign(++count, now).write(folder, bench);
    } catch (IOException e) {
      return; // the next one counts
    }
  }

  /** Takes the sign away. */
  void end(String bench) {
    try {
      Sign.remove(folder, bench);
    } catch (IOException e) {
      return; // it will not change any more, which says the same
    }
  }
}
