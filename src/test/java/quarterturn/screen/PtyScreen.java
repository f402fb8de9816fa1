package quarterturn.screen;

import com.pty4j.PtyProcess;
import com.pty4j.PtyProcessBuilder;
import com.pty4j.WinSize;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.HashMap;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import org.jline.builtins.ScreenTerminal;

/**
 * A program in a pseudo-terminal, with a terminal emulator that reads its screen. For tests of
 * whatever runs in a terminal: keys in, text out, sizes, signals and the exit status.
 */
public final class PtyScreen implements AutoCloseable {
  private static final Duration PATIENCE = Duration.ofSeconds(40);

  private final PtyProcess process;
  private final ScreenTerminal emulator;
  private final StringBuilder sent = new StringBuilder();
  private final Thread reader = new Thread(this::read, "read the screen");

  private PtyScreen(PtyProcess process, int columns, int rows) {
    this.process = process;
    emulator = new ScreenTerminal(columns, rows);
    reader.setDaemon(true);
    reader.start();
  }

  /** Starts a command at 80 by 24 on a UTF-8 terminal. */
  public static PtyScreen start(String... command) throws IOException {
    return start(80, 24, Map.of(), command);
  }

  /**
   * Starts a command.
   *
   * @param environment what is changed of this process's environment
   */
  public static PtyScreen start(
      int columns, int rows, Map<String, String> environment, String... command)
      throws IOException {
    Map<String, String> all = new HashMap<>(System.getenv());
    all.put("TERM", "xterm-256color");
    all.put("LC_ALL", "C.UTF-8");
    all.remove("NO_COLOR");
    all.putAll(environment);
    PtyProcess process =
        new PtyProcessBuilder()
            .setCommand(command)
            .setEnvironment(all)
            .setInitialColumns(columns)
            .setInitialRows(rows)
            .start();
    return new PtyScreen(process, columns, rows);
  }

  private void read() {
    try (Reader in = new InputStreamReader(bytes(), StandardCharsets.UTF_8)) {
      char[] buffer = new char[4096];
      int read = in.read(buffer);
      while (read >= 0) {
        String text = new String(buffer, 0, read);
        synchronized (sent) {
          sent.append(text);
        }
        show(text);
        read = in.read(buffer);
      }
    } catch (IOException ended) {
      // The program has gone; what it sent stands.
      return;
    }
  }

  /**
   * A real terminal keeps what was meant for a larger window inside a smaller one. The emulator
   * fails on it instead; it is passed over, since the program paints all anew once it has noticed.
   */
  private void show(String text) {
    synchronized (emulator) {
      text.codePoints()
          .mapToObj(Character::toString)
          .forEach(
              letter -> {
                try {
                  emulator.write(letter);
                } catch (IndexOutOfBoundsException beyond) {
                  emulator.write("\u001b[H");
                }
              });
    }
  }

  private InputStream bytes() {
    return process.getInputStream();
  }

  /** Types. Use \r for Enter, \u001b for Esc, \u0003 for Ctrl-C. */
  public PtyScreen keys(String keys) throws IOException {
    process.getOutputStream().write(keys.getBytes(StandardCharsets.UTF_8));
    process.getOutputStream().flush();
    return this;
  }

  /** Waits until the text is on the screen. */
  public PtyScreen waitFor(String text) throws InterruptedException {
    return until("to show: " + text, () -> text().contains(text));
  }

  /** Waits until the text is no longer on the screen. */
  public PtyScreen waitUntilGone(String text) throws InterruptedException {
    return until("to show no more: " + text, () -> !text().contains(text));
  }

  private PtyScreen until(String what, BooleanSupplier condition) throws InterruptedException {
    long end = System.nanoTime() + PATIENCE.toNanos();
    while (!condition.getAsBoolean()) {
      if (System.nanoTime() > end) {
        throw new AssertionError("waited in vain for the screen " + what + "\n" + text());
      }
      Thread.sleep(20);
    }
    return this;
  }

  /** Resizes the window. */
  public PtyScreen resize(int columns, int rows) {
    synchronized (emulator) {
      emulator.setSize(columns, rows);
      // The emulator leaves its cursor outside a window that shrank, and fails on the next letter.
      emulator.write("\u001b[H");
    }
    process.setWinSize(new WinSize(columns, rows));
    return this;
  }

  /** What stands on the screen. */
  public String text() {
    synchronized (emulator) {
      return emulator.toString();
    }
  }

  /** Everything that was sent to the terminal so far. */
  public String sent() {
    synchronized (sent) {
      return sent.toString();
    }
  }

  /** Whether the alternate screen was entered and not left. */
  public boolean onAlternateScreen() {
    String all = sent();
    return all.lastIndexOf("\u001b[?1049h") > all.lastIndexOf("\u001b[?1049l");
  }

  /** Whether the cursor was left hidden. */
  public boolean cursorHidden() {
    String all = sent();
    return all.lastIndexOf("\u001b[?25l") > all.lastIndexOf("\u001b[?25h");
  }

  /** The process started in the terminal. */
  public ProcessHandle handle() {
    return ProcessHandle.of(process.pid()).orElseThrow();
  }

  /** Sends a signal such as TERM to a process in the terminal. */
  public PtyScreen signal(String name, ProcessHandle to) throws IOException, InterruptedException {
    new ProcessBuilder("kill", "-" + name, String.valueOf(to.pid())).start().waitFor();
    return this;
  }

  /** Waits for the end and gives the exit status. */
  public int exitStatus() throws InterruptedException {
    if (!process.waitFor(PATIENCE.toSeconds(), TimeUnit.SECONDS)) {
      throw new AssertionError("it did not end\n" + text());
    }
    reader.join(PATIENCE.toMillis());
    return process.exitValue();
  }

  /** The terminal goes away, as when its window is closed. */
  void hangUp() throws IOException {
    process.getOutputStream().close();
    process.getInputStream().close();
  }

  @Override
  public void close() {
    process.destroyForcibly();
  }
}
