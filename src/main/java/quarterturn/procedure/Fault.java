package quarterturn.procedure;

import java.util.Comparator;
import quarterturn.unit.Printable;

/**
 * What is wrong at one place of a file, and what is allowed there.
 *
 * @param mark where
 * @param message what was found and what is allowed, one line
 * @param line the source line, or the part of it around the place; empty where there is none
 * @param caret how many characters of {@code line} stand before the place
 */
public record Fault(Mark mark, String message, String line, int caret) {
  /** In the order of the file. */
  public static final Comparator<Fault> BY_PLACE =
      Comparator.comparingInt((Fault fault) -> fault.mark().line())
          .thenComparingInt(fault -> fault.mark().column());

  /** A fault shown without its source line. */
  public static Fault of(Mark mark, String message) {
    return new Fault(mark, message, "", 0);
  }

  /**
   * {@code file:line:column: message}, then the source line, then a caret under the place. Safe to
   * send to a terminal.
   */
  @Override
  public String toString() {
    String headline = Printable.of(mark + ": " + message);
    if (line.isBlank()) {
      return headline;
    }
    return headline + "\n" + Printable.of(line) + "\n" + " ".repeat(caret) + "^";
  }
}
