package quarterturn.session;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;

/** Lists, sets and maps with one element more, and a search in lists. */
public final class Lists {
  private Lists() {}

  /** A list that never changes: this one with a value at its end. */
  public static <T> List<T> with(List<T> list, T value) {
    return Grown.with(list, value);
  }

  /** A copy of the set with some values. */
  public static <T> Set<T> union(Set<T> set, List<T> values) {
    Set<T> more = new HashSet<>(set);
    more.addAll(values);
    return Set.copyOf(more);
  }

  /**
   * A map that never changes: this one with a value under a key, instead of any value before it.
   */
  public static <K, V> Map<K, V> with(Map<K, V> map, K key, V value) {
    return Layered.with(map, key, value);
  }

  /** The last element of a list that fits, or null. */
  public static <T> @Nullable T last(List<T> list, Predicate<T> fits) {
    for (int i = list.size() - 1; i >= 0; i--) {
      if (fits.test(list.get(i))) {
        return list.get(i);
      }
    }
    return null;
  }
}
