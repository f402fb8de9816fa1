package quarterturn.line;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;

/**
 * Interrupts the thread that made it once something has changed, until it is closed; never after.
 */
final class BrokenOff implements AutoCloseable {
  private final Thread reading = Thread.currentThread();
  private final CountDownLatch closed = new CountDownLatch(1);
  private final BooleanSupplier changed;
  private boolean open = true;
  private boolean interrupted;

  BrokenOff(BooleanSupplier changed) {
    this.changed = changed;
    Thread thread = new Thread(this::look, "look for changes");
    thread.setDaemon(true);
    thread.start();
  }

  private void look() {
    try {
      while (!closed.await(LineSource.LOOK.toMillis(), TimeUnit.MILLISECONDS)) {
        if (changed.getAsBoolean()) {
          interrupt();
          return;
        }
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  private synchronized void interrupt() {
    if (open) {
      interrupted = true;
      reading.interrupt();
    }
  }

  /** Ends the looking; whether it was this that interrupted the reading, and nobody else. */
  synchronized boolean over() {
    open = false;
    closed.countDown();
    if (interrupted) {
      Thread.interrupted();
    }
    return interrupted;
  }

  @Override
  public void close() {
    over();
  }
}
