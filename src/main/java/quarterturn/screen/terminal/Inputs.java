package quarterturn.screen.terminal;

import java.time.Duration;
import java.util.ArrayDeque;
import java.util.Queue;
import java.util.concurrent.BlockingDeque;
import java.util.concurrent.LinkedBlockingDeque;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;

/** What has come for a face and waits: an end before everything else, then each in its turn. */
final class Inputs {
  private final BlockingDeque<Input> inputs = new LinkedBlockingDeque<>();
  private final Queue<Input> ready = new ArrayDeque<>();
  private final KeyDecoder decoder = new KeyDecoder();

  void add(Input input) {
    inputs.add(input);
  }

  void addFirst(Input input) {
    inputs.addFirst(input);
  }

  boolean has(Input input) {
    return inputs.contains(input);
  }

  boolean none() {
    return ready.isEmpty() && inputs.isEmpty();
  }

  /** The next input, or null when none came within {@code wait}. */
  @Nullable Input next(Duration wait) throws InterruptedException {
    Input first = inputs.peekFirst();
    if (first instanceof Input.Over || first instanceof Input.Broke) {
      return inputs.pollFirst();
    }
    long until = System.nanoTime() + wait.toNanos();
    while (ready.isEmpty()) {
      long left = until - System.nanoTime();
      long patience = decoder.pending() ? decoder.patience().toNanos() : left;
      Input input = inputs.poll(patience, TimeUnit.NANOSECONDS);
      if (input instanceof Input.Sent sent) {
        decode(sent);
      } else if (input != null) {
        return input;
      } else if (decoder.pending()) {
        decoder.giveUp().forEach(key -> ready.add(new Input.Pressed(key)));
      } else {
        return null;
      }
    }
    return ready.poll();
  }

  private void decode(Input.Sent sent) {
    sent.text()
        .chars()
        .forEach(unit -> decoder.feed(unit).forEach(key -> ready.add(new Input.Pressed(key))));
  }

  /**
   * Drops keys pressed before the present view could be seen. They are decoded all the same, so
   * that the rest of a paste is not taken for keys.
   */
  void forgetKeys() {
    inputs.removeIf(
        input -> {
          if (input instanceof Input.Sent sent) {
            decode(sent);
          }
          return input instanceof Input.Sent;
        });
    decoder.forget();
    ready.removeIf(Input.Pressed.class::isInstance);
  }
}
