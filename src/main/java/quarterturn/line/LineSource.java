package quarterturn.line;

import java.io.IOException;
import java.io.PrintWriter;
import java.time.Duration;
import java.util.List;
import java.util.function.BooleanSupplier;
import org.jspecify.annotations.Nullable;

/** A source of typed lines. */
public interface LineSource {
  /** How long something that may change goes unlooked at. */
  Duration LOOK = Duration.ofMillis(250);

  /** Who may see what is typed. */
  enum Seen {
    SHOWN,
    /** Shown while it is typed, and gone with Enter. */
    CLEARED,
    /** Not even shown while it is typed. */
    MASKED
  }

  /**
   * The next line, or null at the end of input.
   *
   * @param prompt what stands before the place to type
   * @param words what can be typed now, offered for completion where there is any
   * @throws StopKeyException when the person asks to stop at once
   */
  @Nullable String readLine(String prompt, List<String> words) throws IOException, StopKeyException;

  /**
   * The next line, or null at the end of input, unless something changes first. What was typed by
   * then stands there again the next time with the same prompt.
   *
   * @param changed looked at now and then, maybe by another thread
   * @throws ChangedException when it changed before the line was ended
   * @throws StopKeyException when the person asks to stop at once
   */
  default @Nullable String readLine(
      String prompt, List<String> words, Seen seen, BooleanSupplier changed)
      throws IOException, StopKeyException, ChangedException {
    return readLine(prompt, words);
  }

  /**
   * Lets time pass.
   *
   * @throws StopKeyException when the person asks to stop at once
   */
  void pause(Duration time) throws StopKeyException;

  /** Lets time pass until something changes; whether it did. */
  default boolean pause(Duration time, BooleanSupplier changed) throws StopKeyException {
    for (Duration left = time; left.compareTo(Duration.ZERO) > 0; left = left.minus(LOOK)) {
      if (changed.getAsBoolean()) {
        return true;
      }
      pause(left.compareTo(LOOK) < 0 ? left : LOOK);
    }
    return changed.getAsBoolean();
  }

  /**
   * Waits until something changes. A line typed meanwhile is given back where it can't wait; any
   * other is kept, so that it is read later.
   *
   * @param urgent whether a line can't wait; its second argument, whether others wait before it
   * @return null where something changed
   */
  default @Nullable String await(BooleanSupplier changed, Urgent urgent)
      throws IOException, StopKeyException {
    while (!changed.getAsBoolean()) {
      pause(LOOK);
    }
    return null;
  }

  /** The same, for some time at most. */
  default @Nullable String await(Duration most, BooleanSupplier changed, Urgent urgent)
      throws IOException, StopKeyException {
    pause(most, changed);
    return null;
  }

  /** Which lines can't wait. */
  interface Urgent {
    /** Whether a line can't wait, given whether others that do came before it. */
    boolean is(String line, boolean afterOthers);
  }

  /**
   * Puts a text where the next line is typed at this prompt; false where nothing can stand there.
   */
  default boolean begin(String prompt, String text) {
    return false;
  }

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

  /** What was asked changed while a line was typed. */
  final class ChangedException extends Exception {
    private static final long serialVersionUID = 1L;
  }
}
