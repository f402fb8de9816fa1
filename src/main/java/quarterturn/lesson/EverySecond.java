package quarterturn.lesson;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;

/** Does something every second on a thread of its own, until it is closed. */
public final class EverySecond implements AutoCloseable {
  private static final long EVERY_MILLIS = 1000;

  private final CountDownLatch closed = new CountDownLatch(1);
  private final Thread thread;

  private EverySecond(String name, Runnable act) {
    this.thread = new Thread(() -> run(act), name);
  }

  /** Begins to act every second, the first time a second from now. */
  public static EverySecond begin(String name, Runnable act) {
    EverySecond every = new EverySecond(name, act);
    every.thread.setDaemon(true);
    every.thread.start();
    return every;
  }

  private void run(Runnable act) {
    try {
      while (!closed.await(EVERY_MILLIS, TimeUnit.MILLISECONDS)) {
        act.run();
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  /** Ends the acting, and waits until an act that has begun is done. */
  @Override
  public void close() {
    closed.countDown();
    try {
      thread.join(2 * EVERY_MILLIS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }
}
