package quarterturn.unit;

/** Makes text safe to show, so that no control characters reach a terminal. */
public final class Printable {
  private Printable() {}

  /**
   * {@code text} with every control, format, surrogate and line-separator character replaced by
   * U+FFFD. Line breaks count as control characters here: show text line by line.
   */
  public static String of(String text) {
    if (plain(text)) {
      return text;
    }
    StringBuilder out = new StringBuilder(text.length());
    text.codePoints().map(c -> shown(c) ? c : 0xFFFD).forEach(out::appendCodePoint);
    return out.toString();
  }

  /** Whether a text is of the printable characters of ASCII alone, as most are. */
  public static boolean plain(String text) {
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c < ' ' || c > '~') {
        return false;
      }
    }
    return true;
  }

  /** Whether a code point may be sent to a terminal unchanged. */
  public static boolean shown(int codePoint) {
    return switch (Character.getType(codePoint)) {
      case Character.CONTROL,
          Character.FORMAT,
          Character.SURROGATE,
          Character.LINE_SEPARATOR,
          Character.PARAGRAPH_SEPARATOR,
          Character.PRIVATE_USE,
          Character.UNASSIGNED ->
          false;
      default -> true;
    };
  }
}
