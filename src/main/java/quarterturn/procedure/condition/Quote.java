package quarterturn.procedure.condition;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;
import quarterturn.unit.Printable;

/** Quotes words of a file in a message, and suggests the word that was probably meant. */
public final class Quote {
  private static final int LONGEST = 40;

  private Quote() {}

  /** {@code word} in quotes, safe to show and not too long. */
  public static String of(String word) {
    return '"' + cut(word) + '"';
  }

  /** {@code word}, safe to show and not too long. */
  public static String cut(String word) {
    String line = word.replace('\n', ' ');
    boolean whole = line.codePointCount(0, line.length()) <= LONGEST;
    String shown =
        whole ? line : line.substring(0, line.offsetByCodePoints(0, LONGEST - 3)) + "...";
    return Printable.of(shown);
  }

  /**
   * The text {@code Did you mean "reread"?} where one of {@code known} is close, else an empty one.
   */
  public static String meant(String word, Collection<String> known) {
    return nearest(word, known).map(near -> "Did you mean " + of(near) + "?").orElse("");
  }

  /** {@code further}, behind {@link #meant} where one of {@code known} is close. */
  public static String hint(String word, Collection<String> known, String further) {
    String meant = meant(word, known);
    return meant.isEmpty() ? further : meant + " " + further;
  }

  /**
   * The text {@code (did you mean relief?)} for the middle of a message, where one of {@code known}
   * is close to what a person typed, else an empty one.
   */
  public static String asking(String typed, Collection<String> known) {
    String word = typed.strip().toLowerCase(Locale.ROOT);
    return nearest(word, known)
        .or(() -> known.stream().filter(one -> !word.isEmpty() && one.startsWith(word)).findFirst())
        .map(near -> " (did you mean " + near + "?)")
        .orElse("");
  }

  /**
   * The words allowed instead of {@code word}, behind {@link #meant} where one of them is close.
   */
  public static String allowed(String word, Collection<String> known) {
    return hint(word, known, "Allowed: " + String.join(", ", known));
  }

  /** {@code words} with a capital at their head. */
  public static String sentence(String words) {
    return words.isEmpty()
        ? words
        : words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }

  /**
   * The nearest of {@code known}, at most a third of its letters away; empty where none is so near.
   */
  static Optional<String> nearest(String word, Collection<String> known) {
    return known.stream()
        .filter(near -> Math.abs(near.length() - word.length()) <= reach(near))
        .filter(near -> distance(word, near) <= reach(near))
        .min(Comparator.comparingInt(near -> distance(word, near)));
  }

  private static int reach(String word) {
    return Math.max(1, Math.min(3, word.length() / 3));
  }

  /** The number of letters to put in, take out, change or swap with their neighbour. */
  public static int distance(String a, String b) {
    int[][] steps = new int[a.length() + 1][b.length() + 1];
    for (int i = 0; i <= a.length(); i++) {
      for (int j = 0; j <= b.length(); j++) {
        if (i == 0 || j == 0) {
          steps[i][j] = i + j;
          continue;
        }
        int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
        int least = Math.min(steps[i - 1][j], steps[i][j - 1]) + 1;
        least = Math.min(least, steps[i - 1][j - 1] + change);
        if (i > 1 && j > 1 && swapped(a, i, b, j)) {
          least = Math.min(least, steps[i - 2][j - 2] + 1);
        }
        steps[i][j] = least;
      }
    }
    return steps[a.length()][b.length()];
  }

  private static boolean swapped(String a, int i, String b, int j) {
    return a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
  }
}
