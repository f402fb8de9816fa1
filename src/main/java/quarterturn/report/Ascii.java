package quarterturn.report;

import java.text.Normalizer;

/** Text reduced to ASCII: letters without accents, other characters replaced. */
public final class Ascii {
  private static final int LAST = 0x7E;

  private Ascii() {}

  /**
   * {@code text} on one line in ASCII; a character without a plain form becomes a question mark.
   */
  public static String of(String text) {
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
