package quarterturn;

import com.pty4j.PtyProcess;
import com.pty4j.PtyProcessBuilder;
import com.pty4j.WinSize;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.function.IntPredicate;

/**
 * A program in a pseudo-terminal: bytes in, all it sends out, sizes, signals and the exit status.
 */
public final class Pty implements AutoCloseable {
  public static final Duration PATIENCE = Duration.ofSeconds(40);

  private final PtyProcess process;
  private final StringBuilder sent = new StringBuilder();
  private final Thread reader = new Thread(this::read, "read the terminal");

  private Pty(PtyProcess process) {
    this.process = process;
    reader.setDaemon(true);
    reader.start();
  }

  /**
   * Starts a command.
   *
   * @param environment what is changed of this process's environment
   */
  public static Pty start(
      int columns, int rows, Map<String, String> environment, List<String> command)
      throws IOException {
    Map<String, String> all = new HashMap<>(System.getenv());
    all.put("TERM", "xterm-256color");
    all.put("LC_ALL", "C.UTF-8");
    all.remove("NO_COLOR");
    all.putAll(environment);
    return new Pty(
        new PtyProcessBuilder()
            .setCommand(command.toArray(String[]::new))
            .setEnvironment(all)
            .setInitialColumns(columns)
            .setInitialRows(rows)
            .start());
  }

  private void read() {
    try (Reader in = new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8)) {
      char[] buffer = new char[1 << 16];
      int read = in.read(buffer);
      while (read >= 0) {
        synchronized (sent) {
          sent.append(buffer, 0, read);
          sent.notifyAll();
        }
        read = in.read(buffer);
      }
    } catch (IOException ended) {
      // The program has gone; what it sent stands.
      return;
    }
  }

  /** Types bytes, which waits while the program does not read them. */
  public Pty send(byte[] bytes) throws IOException {
    process.getOutputStream().write(bytes);
    process.getOutputStream().flush();
    return this;
  }

  /** Types. Use \r for Enter, \u001b for Esc, \u0003 for Ctrl-C. */
  public Pty send(String keys) throws IOException {
    return send(keys.getBytes(StandardCharsets.UTF_8));
  }

  /** Everything that was sent to the terminal so far. */
  public String sent() {
    synchronized (sent) {
      return sent.toString();
    }
  }

  /** How many UTF-16 units were sent to the terminal so far. */
  public int length() {
    synchronized (sent) {
      return sent.length();
    }
  }

  /** Waits until this text was sent to the terminal, behind the first units; where it ends. */
  public int await(String text, int behind) throws InterruptedException {
    await(text, length -> sent.indexOf(text, behind) >= 0);
    synchronized (sent) {
      return sent.indexOf(text, behind) + text.length();
    }
  }

  /** Waits until more than so many units were sent to the terminal. */
  public void awaitMore(int than) throws InterruptedException {
    await("more than " + than, length -> length > than);
  }

  private void await(String what, IntPredicate condition) throws InterruptedException {
    long end = System.nanoTime() + PATIENCE.toNanos();
    synchronized (sent) {
      while (!condition.test(sent.length())) {
        long left = end - System.nanoTime();
        if (left <= 0 || (!reader.isAlive() && !condition.test(sent.length()))) {
          throw new AssertionError("waited in vain for: " + what + "\n" + sent);
        }
        sent.wait(Math.min(left / 1_000_000 + 1, 100));
      }
    }
  }

  /** Types keys, and tells how long it took until the terminal was sent this text behind them. */
  public Duration answered(String keys, String text) throws IOException, InterruptedException {
    int behind = length();
    long from = System.nanoTime();
    send(keys);
    await(text, behind);
    return Duration.ofNanos(System.nanoTime() - from);
  }

  /** Resizes the window. */
  public Pty resize(int columns, int rows) {
    process.setWinSize(new WinSize(columns, rows));
    return this;
  }

  /** The process started in the terminal, unless it has ended. */
  public Optional<ProcessHandle> running() {
    return ProcessHandle.of(process.pid());
  }

  /** The process started in the terminal. */
  public ProcessHandle handle() {
    return ProcessHandle.of(process.pid()).orElseThrow();
  }

  /** Sends a signal such as TERM to a process in the terminal. */
  public Pty signal(String name, ProcessHandle to) throws IOException, InterruptedException {
    new ProcessBuilder("kill", "-" + name, String.valueOf(to.pid())).start().waitFor();
    return this;
  }

  /** Waits for the end at most so long; whether it came. */
  public boolean ended(Duration most) throws InterruptedException {
    return process.waitFor(most.toMillis(), TimeUnit.MILLISECONDS);
  }

  /** Waits for the end and gives the exit status. */
  public int exitStatus() throws InterruptedException {
    if (!process.waitFor(PATIENCE.toSeconds(), TimeUnit.SECONDS)) {
      throw new AssertionError("it did not end\n" + sent());
    }
    reader.join(PATIENCE.toMillis());
    return process.exitValue();
  }

  /** The terminal goes away, as when its window is closed. */
  public void hangUp() throws IOException {
    process.getOutputStream().close();
    process.getInputStream().close();
  }

  @Override
  public void close() {
    process.destroyForcibly();
  }
}
