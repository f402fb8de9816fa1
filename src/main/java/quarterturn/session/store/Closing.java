package quarterturn.session.store;

import java.io.Closeable;
import java.io.IOException;
import java.util.ArrayDeque;
import java.util.Deque;

/** Resources of an open session, all closed together, the last one first. */
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
