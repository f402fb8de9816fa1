package quarterturn.unit;

import java.util.Locale;

/**
 * Text of people, made ready to be read as a quantity. The digits are 0 to 9: those of other
 * scripts are refused here, once for every quantity.
 */
public final class Digits {
  private Digits() {}

  /**
   * {@code typed} without space around it, in small letters.
   *
   * @throws NotUnderstoodException where it has digits of another script
   */
  public static String plain(String typed) {
    for (int i = 0; i < typed.length(); i++) {
      int c = typed.codePointAt(i);
      if (Character.isDigit(c) && (c < '0' || c > '9')) {
        throw new NotUnderstoodException(
            "\"" + Printable.of(typed.strip()) + "\" has digits of another script; type 0 to 9");
      }
    }
    return typed.strip().toLowerCase(Locale.ROOT);
  }

  /** A typed sentence without its full stop; "0." stays, since a number may be half typed. */
  public static String unended(String typed) {
    String text = typed.strip();
    boolean ended = text.endsWith(".") && !text.matches("[-+]?\\d*\\.");
    return ended ? text.substring(0, text.length() - 1).strip() : text;
  }

  /**
   * A typed whole number.
   *
   * @param digits how many it may have, at most 18
   * @throws NotUnderstoodException where it is none
   */
  public static long whole(String typed, int digits) {
    String text = plain(typed);
    if (!text.matches("[-+]?\\d{1," + digits + "}")) {
      throw Typed.no(typed, "a whole number", "12");
    }
    return Long.parseLong(text);
  }

  /**
   * A typed number without a unit.
   *
   * @throws NotUnderstoodException where it is none
   */
  public static double number(String typed) {
    Typed read = Typed.read(typed);
    if (!read.unit().isEmpty()) {
      throw Typed.no(typed, "a number", "0.5");
    }
    return read.number();
  }
}
