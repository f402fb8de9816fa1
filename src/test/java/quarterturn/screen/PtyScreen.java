package quarterturn.screen;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.function.BooleanSupplier;
import org.jline.builtins.ScreenTerminal;
import quarterturn.Pty;

/**
 * A program in a pseudo-terminal, with a terminal emulator that reads its screen. For tests of
 * whatever runs in a terminal: keys in, text out, sizes, signals and the exit status.
 */
public final class PtyScreen implements AutoCloseable {
  private final Pty pty;
  private final ScreenTerminal emulator;

  /** How much of what was sent the emulator has seen. */
  private int seen;

  private PtyScreen(Pty pty, int columns, int rows) {
    this.pty = pty;
    emulator = new ScreenTerminal(columns, rows);
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
    return new PtyScreen(Pty.start(columns, rows, environment, List.of(command)), columns, rows);
  }

  /**
   * A real terminal keeps what was meant for a larger window inside a smaller one. The emulator
   * fails on it instead; it is passed over, since the program paints all anew once it has noticed.
   */
  private void show() {
    String all = pty.sent();
    String text = all.substring(seen);
    seen = all.length();
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

  /** Types. Use \r for Enter, \u001b for Esc, \u0003 for Ctrl-C. */
  public PtyScreen keys(String keys) throws IOException {
    pty.send(keys);
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
    long end = System.nanoTime() + Pty.PATIENCE.toNanos();
    while (!condition.getAsBoolean()) {
      if (System.nanoTime() > end) {
        throw new AssertionError("waited in vain for the screen " + what + "\n" + text());
      }
      Thread.sleep(20);
    }
    return this;
  }

  /** Resizes the window. */
  public synchronized PtyScreen resize(int columns, int rows) {
    show();
    emulator.setSize(columns, rows);
    // The emulator leaves its cursor outside a window that shrank, and fails on the next letter.
    emulator.write("\u001b[H");
    pty.resize(columns, rows);
    return this;
  }

  /** What stands on the screen. */
  public synchronized String text() {
    show();
    return emulator.toString();
  }

  /** Everything that was sent to the terminal so far. */
  public String sent() {
    return pty.sent();
  }

  /** The terminal, without what it shows. */
  public Pty pty() {
    return pty;
  }

  /** Whether the alternate screen was entered and not left. */
  public boolean onAlternateScreen() {
    return left("\u001b[?1049h", "\u001b[?1049l");
  }

  /** Whether the cursor was left hidden. */
  public boolean cursorHidden() {
    return left("\u001b[?25l", "\u001b[?25h");
  }

  /** Whether the terminal was left to put brackets round a paste. */
  public boolean bracketsPastes() {
    return left("\u001b[?2004h", "\u001b[?2004l");
  }

  private boolean left(String on, String off) {
    String all = sent();
    return all.lastIndexOf(on) > all.lastIndexOf(off);
  }

  /** The process started in the terminal. */
  public ProcessHandle handle() {
    return pty.handle();
  }

  /** Sends a signal such as TERM to a process in the terminal. */
  public PtyScreen signal(String name, ProcessHandle to) throws IOException, InterruptedException {
    pty.signal(name, to);
    return this;
  }

  /** Waits for the end and gives the exit status. */
  public int exitStatus() throws InterruptedException {
    return pty.exitStatus();
  }

  /** The terminal goes away, as when its window is closed. */
  void hangUp() throws IOException {
    pty.hangUp();
  }

  @Override
  public void close() {
    pty.close();
  }
}
