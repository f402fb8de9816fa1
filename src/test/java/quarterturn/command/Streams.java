package quarterturn.command;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * Standard streams that belong to a thread and to those it starts, so that several commands can run
 * in one process at a time and each prints to its own. Other threads have the process's own.
 */
final class Streams {
  private static final InheritableThreadLocal<@Nullable Streams> MINE =
      new InheritableThreadLocal<>();

  private static final Streams OWN = new Streams(System.in, System.out, System.err);

  static {
    System.setIn(
        new InputStream() {
          @Override
          public int read() throws IOException {
            return now().in.read();
          }

          @Override
          public int read(byte[] to, int from, int most) throws IOException {
            return now().in.read(to, from, most);
          }

          @Override
          public int available() throws IOException {
            return now().in.available();
          }
        });
    System.setOut(printing(false));
    System.setErr(printing(true));
  }

  private final InputStream in;
  private final OutputStream out;
  private final OutputStream err;

  private Streams(InputStream in, OutputStream out, OutputStream err) {
    this.in = in;
    this.out = out;
    this.err = err;
  }

  private static Streams now() {
    return Objects.requireNonNullElse(MINE.get(), OWN);
  }

  /** A stream that keeps nothing to itself, so that each thread's bytes go to its own. */
  private static PrintStream printing(boolean errors) {
    OutputStream to =
        new OutputStream() {
          private OutputStream now() {
            return errors ? Streams.now().err : Streams.now().out;
          }

          @Override
          public void write(int b) throws IOException {
            now().write(b);
          }

          @Override
          public void write(byte[] bytes, int from, int length) throws IOException {
            now().write(bytes, from, length);
          }

          @Override
          public void flush() throws IOException {
            now().flush();
          }
        };
    return new PrintStream(to, true, StandardCharsets.UTF_8) {
      @Override
      public void close() {
        flush(); // what one command closes the next one needs
      }
    };
  }

  /** Gives this thread streams, until it gives them back. */
  static void take(InputStream in, OutputStream out, OutputStream err) {
    MINE.set(new Streams(in, out, err));
  }

  static void giveBack() {
    MINE.remove();
  }
}
