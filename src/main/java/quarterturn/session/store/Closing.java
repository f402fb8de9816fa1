package quarterturn.session.store;

import java.io.Closeable;
import java.io.IOException;
import java.util.ArrayDeque;
import java.util.Deque;

/** What an open session keeps from others; all of it is let go together, the last first. */
public final class Closing implements Closeable {
  private final Deque<Closeable> held = new ArrayDeque<>();

  public <C extends Closeable> C keep(C one) {
    held.push(one);
    return one;
  }

  @Override
  public void close() throws IOException {
    while (!held.isEmpty()) {
      try (Closeable one = held.pop()) {
        close();
      }
    }
  }
}
