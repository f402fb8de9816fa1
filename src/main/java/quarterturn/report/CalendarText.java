package quarterturn.report;

import java.nio.charset.StandardCharsets;
import quarterturn.unit.Printable;

/** Builder of an iCalendar file's text, line by line, after RFC 5545. */
final class CalendarText {
  /** Most octets of a line without its line break (RFC 5545, section 3.1). */
  private static final int WIDTH = 75;

  private final StringBuilder text = new StringBuilder();

  /**
   * Adds a line, folded where it is too long: a line break and a blank, never inside a character.
   *
   * @param value the value as it is to be written; see {@link #escaped}
   */
  CalendarText line(String name, String value) {
    String line = name + ":" + value;
    int octets = 0;
    for (int i = 0; i < line.length(); ) {
      int c = line.codePointAt(i);
      int size = Character.toString(c).getBytes(StandardCharsets.UTF_8).length;
      if (octets + size > WIDTH) {
        text.append("\r\n ");
        octets = 1;
      }
      text.appendCodePoint(c);
      octets += size;
      i += Character.charCount(c);
    }
    text.append("\r\n");
    return this;
  }

  /**
   * {@code text} as a value of type TEXT (RFC 5545, section 3.3.11): backslash, semicolon, comma
   * and line breaks are written with a backslash. Other control characters, which are not allowed,
   * become U+FFFD.
   */
  static String escaped(String text) {
    StringBuilder out = new StringBuilder(text.length());
    text.replaceAll("\r\n?", "\n")
        .codePoints()
        .forEach(
            c -> {
              switch (c) {
                case '\\' -> out.append("\\\\");
                case ';' -> out.append("\\;");
                case ',' -> out.append("\\,");
                case '\n' -> out.append("\\n");
                default -> out.appendCodePoint(Printable.shown(c) ? c : 0xFFFD);
              }
            });
    return out.toString();
  }

  @Override
  public String toString() {
    return text.toString();
  }
}
