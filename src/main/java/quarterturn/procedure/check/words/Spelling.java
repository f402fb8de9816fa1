package quarterturn.procedure.check.words;

import java.text.Normalizer;
import java.util.Locale;

/** Writes a text plainly, so that no way of writing hides a word. */
final class Spelling {
  /** Letters of other alphabets that look like one of ours, each above the one it looks like. */
  private static final String OTHER = "аеорсухіјѕԁһոտυνοαικρτ";

  private static final String OURS = "aeopcyxijsdhntuvoaikpt";

  private Spelling() {}

  /**
   * {@code text} in small letters: without what cannot be seen, without accents, fractions written
   * as 1/4.
   */
  static String plain(String text) {
    String small = text.toLowerCase(Locale.ROOT);
    return small.chars().allMatch(c -> c < 128) ? small : folded(small);
  }

  private static String folded(String small) {
    StringBuilder out = new StringBuilder(small.length());
    String written = Normalizer.normalize(spaced(small), Normalizer.Form.NFKD);
    for (int c : written.codePoints().toArray()) {
      int type = Character.getType(c);
      if (type != Character.FORMAT && type != Character.NON_SPACING_MARK) {
        out.append(Character.isSpaceChar(c) ? " " : ours(c));
      }
    }
    return out.toString();
  }

  /** With a space before each fraction in one sign, so that 1½ is no 11/2. */
  private static String spaced(String text) {
    StringBuilder out = new StringBuilder(text.length());
    for (int c : text.codePoints().toArray()) {
      boolean number = Character.getType(c) == Character.OTHER_NUMBER;
      out.append(number ? " " : "").appendCodePoint(c == 'º' ? '°' : c);
    }
    return out.toString();
  }

  private static String ours(int c) {
    int at = OTHER.indexOf(c);
    if (at >= 0) {
      return OURS.substring(at, at + 1);
    }
    return switch (c) {
      case '’', '‘', '´', 'ʼ', '′' -> "'";
      case '⁄', '∕' -> "/";
      case '‐', '‑' -> "-";
      case '→', '⇒' -> ",";
      default -> Character.toString(c);
    };
  }
}
