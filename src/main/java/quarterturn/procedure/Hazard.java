package quarterturn.procedure;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * A hazard statement, shown right before its step.
 *
 * @param word how bad, in the sense of ANSI Z535.6
 * @param harm what can happen
 * @param avoid how to avoid it
 * @param with what a step does that it goes with: a turn, a fact it establishes, a change it makes
 * @param words phrases of a step's text that it goes with, as {@link #plain} writes them
 */
public record Hazard(
    String id, Word word, String harm, String avoid, List<String> with, List<String> words) {
  public Hazard {
    with = List.copyOf(with);
    words = words.stream().map(Hazard::plain).toList();
  }

  private static final Pattern SPACE = Pattern.compile("\\s+");

  /** {@code text} in small letters and with single spaces, so that a line break hides no phrase. */
  public static String plain(String text) {
    String small = text.toLowerCase(Locale.ROOT);
    return small.indexOf('\n') < 0 && !small.contains("  ")
        ? small
        : SPACE.matcher(small).replaceAll(" ");
  }

  /**
   * What in a step this hazard goes with, in words; null where it does not go with the step.
   *
   * @param does what the step does, in the words of {@code with}
   * @param text its text, as {@link #plain} writes it
   */
  public @Nullable String occasion(Set<String> does, String text) {
    for (String one : with) {
      if (does.contains(one)) {
        return one;
      }
    }
    for (String phrase : words) {
      if (text.contains(phrase)) {
        return "the words \"" + phrase + "\"";
      }
    }
    return null;
  }

  /** What is said of it where it was accepted before: the first sentence on how to avoid it. */
  public String brief() {
    int end = avoid.indexOf(". ");
    return end < 0 ? avoid : avoid.substring(0, end + 1);
  }

  /** Whether this hazard names the steps it goes with. */
  public boolean bound() {
    return !with.isEmpty() || !words.isEmpty();
  }

  /** Signal words in the sense of ANSI Z535.6, worst first. */
  public enum Word {
    /** A hazard that will cause death or serious injury if not avoided. */
    DANGER,
    /** A hazard that could cause death or serious injury. */
    WARNING,
    /** A hazard that could cause minor or moderate injury. */
    CAUTION,
    /** A hazard to the instrument, not to a person. */
    NOTICE
  }
}
