package quarterturn.screen.terminal;

import java.io.IOException;
import java.io.OutputStream;

/**
 * Output to the terminal that can be shut. After that, drawing still under way in another thread
 * has no effect, so that nothing appears on a terminal that was given back.
 */
final class GatedOutput extends OutputStream {
  private final OutputStream out;
  private boolean open;

  GatedOutput(OutputStream out) {
    this.out = out;
  }

  /** An action that runs while no other thread can write. */
  interface Turn {
    void take(OutputStream out) throws IOException;
  }

  /** Opens the output, unless it is open, and runs {@code first} before anything is written. */
  void open(Turn first) throws IOException {
    change(true, first);
  }

  /**
   * Shuts the output, unless it is shut, and runs {@code last} after everything else was written.
   */
  void shut(Turn last) throws IOException {
    change(false, last);
  }

  /** Runs {@code turn} while no other thread writes, unless the output is shut. */
  synchronized void whileOpen(Turn turn) throws IOException {
    if (open) {
      turn.take(out);
      out.flush();
    }
  }

  private synchronized void change(boolean to, Turn turn) throws IOException {
    if (open != to) {
      open = to;
      turn.take(out);
      out.flush();
    }
  }

  @Override
  public void write(int b) throws IOException {
    write(new byte[] {(byte) b}, 0, 1);
  }

  @Override
  public synchronized void write(byte[] bytes, int from, int length) throws IOException {
    if (open) {
      out.write(bytes, from, length);
    }
  }

  @Override
  public synchronized void flush() throws IOException {
    if (open) {
      out.flush();
    }
  }
}
