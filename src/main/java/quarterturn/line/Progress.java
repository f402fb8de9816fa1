package quarterturn.line;

import java.io.PrintStream;

/** A progress bar on one line of a terminal; it is wiped away at the end. */
public final class Progress implements AutoCloseable {
  private static final int CELLS = 40;
  private static final long PAUSE_NANOS = 100_000_000;

  private final PrintStream out;
  private final int all;
  private long last;
  private int most;

  /**
   * A bar that has not begun.
   *
   * @param out a terminal
   * @param all what counts as full
   */
  public Progress(PrintStream out, int all) {
    this.out = out;
    this.all = all;
  }

  /** Sets how much is done; may be called from any thread, and draws now and then only. */
  public synchronized void at(int done) {
    most = Math.max(most, done);
    long now = System.nanoTime();
    if (now - last < PAUSE_NANOS && most < all) {
      return;
    }
    last = now;
    int full = (int) ((long) CELLS * most / all);
    out.print("\r[" + "#".repeat(full) + ".".repeat(CELLS - full) + "] " + most + " of " + all);
    out.flush();
  }

  @Override
  public synchronized void close() {
    out.print("\r" + " ".repeat(CELLS + 3 + 4 + 2 * String.valueOf(all).length()) + "\r");
    out.flush();
  }
}
