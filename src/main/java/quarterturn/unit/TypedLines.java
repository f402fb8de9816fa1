package quarterturn.unit;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.Reader;
import org.jspecify.annotations.Nullable;

/**
 * Reads a stream line by line, keeping no more of a line than a limit, however long the line is.
 */
public final class TypedLines {
  private final Reader in;
  private final int limit;
  private boolean begun;

  /**
   * A reader of the lines of {@code in}.
   *
   * @param limit most characters to keep of a line
   */
  public TypedLines(Reader in, int limit) {
    this.in = new BufferedReader(in);
    this.limit = limit;
  }

  /**
   * A line of text without its line break.
   *
   * @param cut whether it was longer than the limit, so that its rest was dropped
   */
  public record Line(String text, boolean cut) {}

  /** The next line, or null at the end of input. */
  public @Nullable Line next() throws IOException {
    StringBuilder text = new StringBuilder();
    boolean cut = false;
    int c = in.read();
    if (c == '\uFEFF' && !begun) {
      c = in.read(); // a byte order mark, which some shells put before what they pipe
    }
    begun = true;
    if (c < 0) {
      return null;
    }
    for (; c >= 0 && c != '\n'; c = in.read()) {
      if (text.length() < limit) {
        text.append((char) c);
      } else {
        cut = cut || c != '\r';
      }
    }
    int end = text.length();
    if (end > 0 && text.charAt(end - 1) == '\r') {
      text.setLength(end - 1);
    }
    return new Line(text.toString(), cut);
  }
}
