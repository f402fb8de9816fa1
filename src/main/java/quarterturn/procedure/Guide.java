package quarterturn.procedure;

import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/**
 * What helps a person beside the steps.
 *
 * @param words words of the trade that texts use
 * @param needs what the work needs, what each is for, and what will do instead
 * @param meanwhile when the instrument may be played before the work is over
 */
public record Guide(List<Entry> words, List<Entry> needs, List<Entry> meanwhile) {
  public static final Guide NONE = new Guide(List.of(), List.of(), List.of());

  public Guide {
    words = List.copyOf(words);
    needs = List.copyOf(needs);
    meanwhile = List.copyOf(meanwhile);
  }

  /** A word or a thing, and what is said of it. */
  public record Entry(String name, String means) {
    private boolean in(String text) {
      String plural = Pattern.quote(name) + "(s|es)?";
      return Pattern.compile("(?i)\\b" + plural + "\\b").matcher(text).find();
    }
  }

  /** Whether it says nothing. */
  public boolean isEmpty() {
    return words.isEmpty() && needs.isEmpty() && meanwhile.isEmpty();
  }

  /** The words that a text uses, longer ones before those they contain. */
  public List<Entry> of(String text) {
    return words.stream()
        .filter(entry -> entry.in(text))
        .filter(
            entry ->
                words.stream()
                    .noneMatch(
                        longer ->
                            longer != entry
                                && contains(longer, entry)
                                && !entry.in(without(text, longer))))
        .toList();
  }

  private static boolean contains(Entry longer, Entry entry) {
    return longer.name().toLowerCase(Locale.ROOT).contains(entry.name().toLowerCase(Locale.ROOT));
  }

  private static String without(String text, Entry entry) {
    return text.replaceAll("(?i)" + Pattern.quote(entry.name()), " ");
  }
}
