package quarterturn.soak;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;

/** A program that was started. What is sent to it waits behind what was sent before. */
abstract class Child implements AutoCloseable {
  private final ExecutorService writer =
      Executors.newSingleThreadExecutor(
          work -> {
            Thread thread = new Thread(work, "type");
            thread.setDaemon(true);
            return thread;
          });

  /** Writes, and waits while the program does not read. */
  abstract void write(byte[] bytes) throws IOException;

  /** How much it printed so far. */
  abstract int length();

  /** All that it printed so far. */
  abstract String out();

  /** Waits for its end; whether it came. */
  abstract boolean ended(Duration most) throws InterruptedException;

  /** Its exit status once it has ended. */
  abstract int status() throws InterruptedException;

  /** The program itself, while it runs. */
  abstract Optional<ProcessHandle> program();

  /** Whoever reads what it prints goes away, and whoever types. */
  abstract void hangUp() throws IOException;

  /** What is typed ends. */
  abstract void endInput();

  void resize(int columns, int rows) {}

  final boolean alive() throws InterruptedException {
    return !ended(Duration.ZERO);
  }

  final void send(byte[] bytes) {
    later(() -> write(bytes));
  }

  final void send(String text) {
    send(text.getBytes(StandardCharsets.UTF_8));
  }

  /** What may fail where the program has gone. */
  interface Writing {
    void run() throws IOException;
  }

  final void later(Writing writing) {
    writer.execute(
        () -> {
          try {
            writing.run();
          } catch (IOException gone) {
            // It reads no more; how it ended is looked at later.
          }
        });
  }

  final void signal(String name) throws IOException, InterruptedException {
    Optional<ProcessHandle> program = program();
    if (program.isPresent()) {
      new ProcessBuilder("kill", "-" + name, String.valueOf(program.get().pid()))
          .redirectErrorStream(true)
          .redirectOutput(ProcessBuilder.Redirect.DISCARD)
          .start()
          .waitFor();
    }
  }

  /** Waits until it printed more than so much and then nothing for a moment, but not for ever. */
  final boolean quiet(int than, Duration moment, Duration most) throws InterruptedException {
    long end = System.nanoTime() + most.toNanos();
    int seen = length();
    long since = System.nanoTime();
    while (System.nanoTime() < end && alive()) {
      Thread.sleep(10);
      int now = length();
      if (now != seen) {
        seen = now;
        since = System.nanoTime();
      }
      if (seen > than && System.nanoTime() - since > moment.toNanos()) {
        return true;
      }
    }
    return seen > than;
  }

  @Override
  public void close() {
    writer.shutdownNow();
    program().ifPresent(ProcessHandle::destroyForcibly);
  }
}
