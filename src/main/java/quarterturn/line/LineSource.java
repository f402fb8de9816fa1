package quarterturn.line;

import java.io.IOException;
import java.io.PrintWriter;
import java.time.Duration;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A source of typed lines. */
public interface LineSource {
  /**
   * The next line, or null at the end of input.
   *
   * @param prompt what stands before the place to type
   * @param words what can be typed now, offered for completion where there is any
   * @throws StopKeyException when the person asks to stop at once
   */
  @Nullable String readLine(String prompt, List<String> words) throws IOException, StopKeyException;

  /**
   * The next line, not shown while it is typed, for what others are not to see.
   *
   * @throws StopKeyException when the person asks to stop at once
   */
  default @Nullable String readHidden(String prompt) throws IOException, StopKeyException {
    return readLine(prompt, List.of());
  }

  /** Prints a line from another thread while a line is being typed. */
  default void aside(String line) {}

  /**
   * Lets time pass.
   *
   * @throws StopKeyException when the person asks to stop at once
   */
  void pause(Duration time) throws StopKeyException;

  /** Keeps what stands on a line for questions that somebody else will ask. */
  default void keep(List<String> parts) {}

  /** Gives what was kept, once. */
  default List<String> kept() {
    return List.of();
  }

  /** The number of the line read last, where lines come from a script; else 0. */
  default int scriptLine() {
    return 0;
  }

  /** Whether a person types and can be asked back; false for a pipe. */
  boolean typedByHand();

  /** The width in columns. */
  int width();

  /** Prints lines from another thread while somebody may be typing. */
  default void meanwhile(PrintWriter out, List<String> lines) {
    lines.forEach(out::println);
    out.flush();
  }

  /** The person pressed the key that stops a program. */
  final class StopKeyException extends Exception {
    private static final long serialVersionUID = 1L;
  }
}
