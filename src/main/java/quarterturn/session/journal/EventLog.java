package quarterturn.session.journal;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The contents of a file of events.
 *
 * @param <E> the type of the events
 */
public interface EventLog<E> {
  /** The valid events, in the order they were written; the first has number one. */
  List<E> events();

  /** A sentence on what is wrong with the file, or null. */
  @Nullable String notice();

  /**
   * Number of the first line that can't be used, counted from one; 0 where the file is sound or
   * only its last line was cut short.
   */
  int damagedAtLine();

  /** Whether the file is damaged, so that no more may be appended. */
  default boolean damaged() {
    return damagedAtLine() > 0;
  }
}
