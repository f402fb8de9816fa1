package quarterturn.unit;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.Reader;
import java.time.Duration;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;

/**
 * Reads a stream line by line, keeping no more of a line than a limit, however long the line is.
 * One thread asks for lines; what it waits for in vain is kept for the next time.
 */
public final class TypedLines {
  /** Most lines kept for later; more stay in the stream. */
  private static final int MOST_KEPT = 10_000;

  private final Reader in;
  private final int limit;
  private final Deque<Line> kept = new ArrayDeque<>();
  private @Nullable FutureTask<Optional<Line>> coming;
  private boolean begun;
  private boolean ended;

  /**
   * A reader of the lines of {@code in}.
   *
   * @param limit most characters to keep of a line
   */
  public TypedLines(Reader in, int limit) {
    this.in = new BufferedReader(in);
    this.limit = limit;
  }

  /**
   * A line of text without its line break.
   *
   * @param cut whether it was longer than the limit, so that its rest was dropped
   */
  public record Line(String text, boolean cut) {}

  /** The next line, or null at the end of input. */
  public @Nullable Line next() throws IOException {
    Line first = kept.poll();
    return first == null ? arrived() : first;
  }

  /** Waits for a line or the end of input; whether it came within {@code wait}. */
  public boolean comes(Duration wait) throws InterruptedException {
    return !kept.isEmpty() || arrives(wait);
  }

  /**
   * Waits for a line that does not wait for its turn; the others are kept for later, in order.
   *
   * @return null where none came within {@code wait}
   */
  public @Nullable Line urgent(Duration wait, Predicate<Line> first)
      throws IOException, InterruptedException {
    long until = System.nanoTime() + wait.toNanos();
    while (!ended && kept.size() < MOST_KEPT) {
      if (!arrives(Duration.ofNanos(Math.max(0, until - System.nanoTime())))) {
        return null;
      }
      Line line = arrived();
      if (line != null && first.test(line)) {
        return line;
      } else if (line != null) {
        kept.add(line);
      }
    }
    TimeUnit.NANOSECONDS.sleep(until - System.nanoTime());
    return null;
  }

  /** Whether lines that came earlier wait for their turn. */
  public boolean keeps() {
    return !kept.isEmpty();
  }

  /** Whether the input has ended and nothing of it is left. */
  public boolean spent() {
    return ended && kept.isEmpty();
  }

  private boolean arrives(Duration wait) throws InterruptedException {
    if (coming == null) {
      coming = new FutureTask<>(() -> Optional.ofNullable(read()));
      Thread thread = new Thread(coming, "read a line");
      thread.setDaemon(true);
      thread.start();
    }
    try {
      coming.get(wait.toNanos(), TimeUnit.NANOSECONDS);
      return true;
    } catch (ExecutionException failed) {
      return true; // the failure is what comes next
    } catch (TimeoutException notYet) {
      return false;
    }
  }

  private @Nullable Line arrived() throws IOException {
    FutureTask<Optional<Line>> awaited = coming;
    coming = null;
    Line line;
    try {
      line = awaited == null ? read() : awaited.get().orElse(null);
    } catch (ExecutionException failed) {
      throw new IOException("the input could not be read", failed.getCause());
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IOException("the reading was interrupted", e);
    }
    ended |= line == null;
    return line;
  }

  private @Nullable Line read() throws IOException {
    StringBuilder text = new StringBuilder();
    boolean cut = false;
    int c = in.read();
    if (c == '\uFEFF' && !begun) {
      c = in.read(); // a byte order mark, which some shells put before what they pipe
    }
    begun = true;
    if (c < 0) {
      return null;
    }
    for (; c >= 0 && c != '\n'; c = in.read()) {
      if (text.length() < limit) {
        text.append((char) c);
      } else {
        cut = cut || c != '\r';
      }
    }
    int end = text.length();
    if (end > 0 && text.charAt(end - 1) == '\r') {
      text.setLength(end - 1);
    }
    return new Line(text.toString(), cut);
  }
}
