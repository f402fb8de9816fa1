package quarterturn.screen.terminal;

import java.io.IOException;
import java.io.OutputStream;

/**
 * The way to the terminal. Once shut, drawing that is still under way in another thread goes
 * nowhere, so that nothing is drawn over a terminal that was given back.
 */
final class GatedOutput extends OutputStream {
  private final OutputStream out;
  private boolean open;

  GatedOutput(OutputStream out) {
    this.out = out;
  }

  /** What is done while nobody else can write. */
  interface Turn {
    void take(OutputStream out) throws IOException;
  }

  /** Opens, unless it is open, and does {@code first} before anything else is written. */
  void open(Turn first) throws IOException {
    change(true, first);
  }

  /** Shuts, unless it is shut, and does {@code last} after everything else was written. */
  void shut(Turn last) throws IOException {
    change(false, last);
  }

  /** Does {@code turn} between what others write, unless it is shut. */
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
