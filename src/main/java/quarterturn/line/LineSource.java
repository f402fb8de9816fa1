package quarterturn.line;

import java.io.IOException;
import java.time.Duration;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Where typed lines come from. */
public interface LineSource {
  /**
   * The next line, or null at the end of input.
   *
   * @param prompt what stands before the place to type
   * @param words what can be typed now, offered for completion where there is any
   * @throws Interrupted when the person asks to stop at once
   */
  @Nullable String readLine(String prompt, List<String> words) throws IOException, Interrupted;

  /**
   * Lets time pass.
   *
   * @throws Interrupted when the person asks to stop at once
   */
  void pause(Duration time) throws Interrupted;

  /** Whether a person types, who can be asked back; false for a pipe. */
  boolean typedByHand();

  /** Columns there are to print in. */
  int width();

  /** The person pressed the key that stops a program. */
  final class Interrupted extends Exception {
    private static final long serialVersionUID = 1L;
  }
}
