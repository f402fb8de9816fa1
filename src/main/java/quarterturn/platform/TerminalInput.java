package quarterturn.platform;

import java.io.IOException;
import java.io.InputStream;
import java.io.InterruptedIOException;
import java.util.concurrent.TimeUnit;
import org.jline.utils.NonBlockingInputStream;

/**
 * What the terminal sends. A thread of its own reads all there is, however busy the program is, so
 * that a Ctrl-C never waits in the terminal behind a paste; {@link Pastes} bounds what is kept.
 */
public final class TerminalInput extends NonBlockingInputStream {
  /** Bytes that are kept until somebody reads them; a reading that does not fit in is dropped. */
  private static final int ROOM = 1 << 16;

  private static final int READING = 1 << 13;

  private final InputStream in;
  private final Pastes pastes = new Pastes();
  private final byte[] kept = new byte[ROOM];
  private int from;
  private int to;
  private boolean started;
  private boolean gone;

  public TerminalInput(InputStream in) {
    this.in = in;
  }

  private void drain() {
    byte[] reading = new byte[READING];
    try {
      int length = in.read(reading);
      while (length >= 0) {
        keep(pastes.pass(reading, length, System.nanoTime()));
        length = in.read(reading);
      }
    } catch (IOException hungUp) {
      // Told below, like an orderly end of input.
    } finally {
      end();
    }
  }

  private synchronized void keep(byte[] more) {
    if (ROOM - to < more.length) {
      System.arraycopy(kept, from, kept, 0, to - from);
      to -= from;
      from = 0;
    }
    if (ROOM - to >= more.length) {
      System.arraycopy(more, 0, kept, to, more.length);
      to += more.length;
      notifyAll();
    }
  }

  private synchronized void end() {
    gone = true;
    notifyAll();
  }

  /**
   * Waits for a byte.
   *
   * @param millis the longest wait; 0 for ever
   * @return 1, or why there is none
   * @throws InterruptedIOException also where bytes wait: an interrupt comes before them
   */
  private int await(long millis) throws InterruptedIOException {
    if (!started) {
      started = true;
      Thread thread = new Thread(this::drain, "read the terminal");
      thread.setDaemon(true);
      thread.start();
    }
    long until = System.nanoTime() + TimeUnit.MILLISECONDS.toNanos(millis);
    try {
      if (Thread.interrupted()) {
        throw new InterruptedException();
      }
      while (from == to) {
        long left = until - System.nanoTime();
        if (gone || closed) {
          return EOF;
        }
        if (millis > 0 && left <= 0) {
          return READ_EXPIRED;
        }
        wait(millis > 0 ? left / 1_000_000 + 1 : 0);
      }
    } catch (InterruptedException e) {
      throw new InterruptedIOException();
    }
    return 1;
  }

  @Override
  public synchronized int read(long timeout, boolean isPeek) throws IOException {
    int there = await(timeout);
    if (there < 0) {
      return there;
    }
    int next = kept[from] & 0xff;
    from += isPeek ? 0 : 1;
    return next;
  }

  @Override
  public synchronized int readBuffered(byte[] b, int off, int len, long timeout)
      throws IOException {
    int there = len == 0 ? 0 : await(timeout);
    if (there <= 0) {
      return there;
    }
    int count = Math.min(len, to - from);
    System.arraycopy(kept, from, b, off, count);
    from += count;
    return count;
  }

  @Override
  public synchronized int available() {
    return to - from;
  }

  @Override
  public synchronized void close() throws IOException {
    super.close();
    notifyAll();
  }
}
