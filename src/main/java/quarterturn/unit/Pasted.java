package quarterturn.unit;

import java.nio.charset.StandardCharsets;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * What somebody pasted, as one line of text that can be typed nowhere but in a field.
 *
 * @param text without control characters and terminal sequences; {@code "; "} for each line end, so
 *     that what stood on two lines is never read as one
 * @param whole whether nothing was left out of it
 */
public record Pasted(String text, boolean whole) {
  /** The most bytes, in UTF-8, of a pasted text, and of a line that is typed. */
  public static final int MOST = 4096;

  /** Stands in a pasted text where something was left out. */
  public static final char LEFT_OUT = '\u001a';

  /** The answer to a paste that did not fit in. */
  public static final String REFUSED = "The paste was too long: its end was refused.";

  /** The answer to a paste where nothing can be typed. */
  public static final String NOWHERE = "Nothing can be typed here, so the paste was refused.";

  private static final Pattern SEQUENCE =
      Pattern.compile(
          "(?s)(\u001b\\[|\u009b)(M.{0,3}|[0-?]*[ -/]*[@-~]?)"
              + "|\u001b\\][^\u0007\u001b]*\u0007?"
              + "|\u001b[PX^_][^\u001b]*"
              + "|\u001bO.?"
              + "|\u001b.?");

  private static final Pattern UNTYPED = Pattern.compile("[\\p{Cntrl}\u0080-\u009f]");

  /** The line for a pasted text. */
  public static Pasted of(String raw) {
    String line =
        SEQUENCE
            .matcher(raw)
            .replaceAll("")
            .lines()
            .flatMap(one -> one.lines())
            .map(one -> UNTYPED.matcher(one.replace('\t', ' ')).replaceAll("").strip())
            .filter(one -> !one.isEmpty())
            .collect(Collectors.joining("; "));
    String typed =
        line.codePoints()
            .filter(Printable::shown)
            .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
            .toString();
    String most = first(typed, MOST);
    return new Pasted(most, raw.indexOf(LEFT_OUT) < 0 && most.equals(typed));
  }

  /** The beginning of the text that fits behind or into a line that is typed already. */
  public String fitting(String line) {
    return first(text, MOST - bytes(line));
  }

  /** Whether all of it fits into a line that is typed already. */
  public boolean fits(String line) {
    return whole && fitting(line).length() == text.length();
  }

  /** The bytes of a text in UTF-8. */
  public static int bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8).length;
  }

  private static String first(String text, int most) {
    int used = 0;
    int at = 0;
    while (at < text.length()) {
      int c = text.codePointAt(at);
      used += c < 0x80 ? 1 : c < 0x800 ? 2 : c < 0x10000 ? 3 : 4;
      if (used > most) {
        break;
      }
      at += Character.charCount(c);
    }
    return text.substring(0, at);
  }
}
