package quarterturn.report;

import java.text.Normalizer;

/** Text for any terminal and any font: letters without their accents, and nothing beyond ASCII. */
final class Ascii {
  private static final int LAST = 0x7E;

  private Ascii() {}

  /** {@code text} on one line; what has no letter of its own here becomes a question mark. */
  static String of(String text) {
    StringBuilder out = new StringBuilder();
    Normalizer.normalize(text, Normalizer.Form.NFKD)
        .codePoints()
        .filter(c -> Character.getType(c) != Character.NON_SPACING_MARK)
        .map(c -> c == '\n' || c == '\t' ? ' ' : c)
        .map(c -> c < ' ' || c > LAST ? '?' : c)
        .forEach(out::appendCodePoint);
    return out.toString();
  }
}
