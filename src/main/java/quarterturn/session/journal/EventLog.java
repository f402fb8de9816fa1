package quarterturn.session.journal;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a file of events says.
 *
 * @param <E> its events
 */
public interface EventLog<E> {
  /** Those that stand, in the order they were written; the first has number one. */
  List<E> events();

  /** What is wrong with the file in a sentence for people, or null. */
  @Nullable String notice();

  /**
   * The first line that can't be used, counted from one; 0 where the file is sound or only its last
   * line was cut short.
   */
  int damagedAtLine();

  /** Whether nothing more may be appended. */
  default boolean damaged() {
    return damagedAtLine() > 0;
  }
}
