package quarterturn.session;

import java.time.LocalDate;
import java.util.Locale;
import java.util.random.RandomGenerator;
import quarterturn.platform.ReservedNames;
import quarterturn.unit.NotUnderstoodException;
import quarterturn.unit.Printable;

/** Names of sessions, instruments and the like, which are also file names on every system. */
public final class Names {
  private static final int LONGEST = 41;

  /**
   * Digits and letters of a random mark, without i, l, o and u, which are misread or make words.
   */
  private static final String BASE32 = "0123456789abcdefghjkmnpqrstvwxyz";

  private static final int MARK = 4;
  private static final int LONGEST_PROCEDURE = 24;

  private Names() {}

  /**
   * Checks a name and returns it in small letters.
   *
   * @param what the thing named, for the message, such as "an instrument"
   * @throws NotUnderstoodException saying what a name may be
   */
  public static String check(String what, String typed) {
    String name = typed.strip().toLowerCase(Locale.ROOT);
    if (!good(name)) {
      throw new NotUnderstoodException(
          "\""
              + Printable.of(typed)
              + "\" can't name "
              + what
              + "; use letters a to z, digits and dashes, at most 41, beginning with a letter or"
              + " digit, for example practice-bass");
    }
    return name;
  }

  /** Whether a text is a name as it stands. */
  public static boolean good(String name) {
    for (int i = 0; i < name.length(); i++) {
      char c = name.charAt(i);
      if (!((c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || (c == '-' && i > 0))) {
        return false;
      }
    }
    return !name.isEmpty() && name.length() <= LONGEST && !ReservedNames.has(name);
  }

  /**
   * A name for a new session: its day, its procedure and a random mark, so that two machines that
   * share a folder never write the same file: {@code 2027-03-01-relief-k3f9}.
   */
  public static String session(LocalDate day, String procedure, RandomGenerator random) {
    String word = procedure.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-");
    StringBuilder name = new StringBuilder().append(day).append('-');
    name.append(word, 0, Math.min(word.length(), LONGEST_PROCEDURE));
    return check("a session", marked(name.toString(), random));
  }

  /** A name with a number behind it, cut where it would be too long for a name. */
  public static String numbered(String name, int n) {
    String number = "-" + n;
    return name.substring(0, Math.min(name.length(), LONGEST - number.length())) + number;
  }

  /** A name with a random mark at its end, so that two machines never make the same name. */
  public static String marked(String name, RandomGenerator random) {
    StringBuilder marked = new StringBuilder(name).append('-');
    for (int i = 0; i < MARK; i++) {
      marked.append(BASE32.charAt(random.nextInt(BASE32.length())));
    }
    return marked.toString();
  }
}
