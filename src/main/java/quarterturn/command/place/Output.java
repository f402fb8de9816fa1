package quarterturn.command.place;

import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import quarterturn.session.ExitStatus;

/**
 * Standard output that tells when it can't be written to. Java's own print streams and writers keep
 * that to themselves; none of them is asked, since what fails here ends the command.
 */
public final class Output extends OutputStream {
  /**
   * Exit status where nobody reads on, as behind {@code | head}: 128 and the number of the signal
   * by which other programs end then, so that a shell sees that not all was printed.
   */
  public static final int NOBODY_READS = 141;

  private final OutputStream to;
  private final Thread command = Thread.currentThread();
  private volatile @Nullable IOException lost;

  public Output(OutputStream to) {
    this.to = to;
  }

  /** Ends a command whose output is lost; what became of it, its exit status says. */
  public static final class LostException extends UncheckedIOException {
    private static final long serialVersionUID = 1L;

    LostException(IOException cause) {
      super(cause);
    }
  }

  /** A stream to print to, which passes on what is lost. */
  public PrintStream stream() {
    return new PrintStream(this, false, StandardCharsets.UTF_8);
  }

  @Override
  public void write(int b) {
    write(new byte[] {(byte) b}, 0, 1);
  }

  @Override
  public void write(byte[] bytes, int from, int length) {
    passOn(() -> to.write(bytes, from, length));
  }

  @Override
  public void flush() {
    passOn(to::flush);
  }

  private interface Act {
    void run() throws IOException;
  }

  private void passOn(Act act) {
    IOException before = lost;
    if (before == null) {
      try {
        act.run();
        return;
      } catch (IOException e) {
        lost = e;
        before = e;
      }
    }
    // Another thread, as one that tidies up at Ctrl-C, has nothing to end.
    if (Thread.currentThread() == command) {
      throw new LostException(before);
    }
  }

  /**
   * The exit status of a command that is over.
   *
   * @param status where all was written
   * @param complaint takes the one line on what was not
   */
  public int status(int status, Consumer<String> complaint) {
    try {
      flush();
    } catch (LostException e) {
      // It is asked for below.
    }
    IOException why = lost;
    if (why == null) {
      return status;
    }
    String said = String.valueOf(why.getMessage());
    // Whatever the language of the machine's messages, this word stands in them.
    if (said.toLowerCase(Locale.ROOT).contains("pipe")) {
      return NOBODY_READS;
    }
    complaint.accept(
        "standard output can't be written to (" + said + "); make room there, or name another");
    return ExitStatus.FAILED;
  }
}
