package quarterturn.quick;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.condition.Feel;

/** What a typed word stands for, of which the beginning is enough. */
public final class Begun {
  /** What is typed by habit, for understood, done, yes, no and quit: it names no option. */
  public static final Set<String> ROUTINE = Set.of("u", "d", "y", "n", "q");

  /** The feels in the order in which they are numbered. */
  public static final List<Feel> FEELS = List.of(Feel.values());

  /** The fewest letters of a label's words by which a feel is known. */
  private static final int FEWEST = 4;

  private Begun() {}

  /**
   * The only one whose name begins with a word, or null. A letter that is typed out of habit begins
   * none: typed once too often, at the next prompt it would be an answer.
   */
  public static <T> @Nullable T only(String word, List<T> all, Function<T, String> name) {
    List<T> begun =
        all.stream().filter(o -> name.apply(o).toLowerCase(Locale.ROOT).startsWith(word)).toList();
    return !word.isEmpty() && !ROUTINE.contains(word) && begun.size() == 1 ? begun.get(0) : null;
  }

  /** The feel named by its number, its word or a beginning of it that no other has; or null. */
  public static @Nullable Feel feel(String typed) {
    String word = typed.strip().toLowerCase(Locale.ROOT);
    if (word.matches("\\d")) {
      int number = Integer.parseInt(word);
      return number >= 1 && number <= FEELS.size() ? FEELS.get(number - 1) : null;
    }
    return FEELS.stream()
        .filter(feel -> feel.word().equals(word))
        .findFirst()
        .orElseGet(() -> said(word));
  }

  /** The feel whose word alone begins so, or whose label alone has these words. */
  private static @Nullable Feel said(String words) {
    Feel begun = only(words, FEELS, Feel::word);
    List<Feel> told =
        words.length() < FEWEST
            ? List.of()
            : FEELS.stream()
                .filter(feel -> (feel.label() + " ").toLowerCase(Locale.ROOT).contains(" " + words))
                .toList();
    return begun != null || told.size() != 1 ? begun : told.get(0);
  }
}
