package quarterturn.session;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;

/** Copies of lists, sets and maps with one element more, and a search in lists. */
public final class Lists {
  private Lists() {}

  /** A copy of the list with a value at its end. */
  public static <T> List<T> with(List<T> list, T value) {
    List<T> more = new ArrayList<>(list);
    more.add(value);
    return List.copyOf(more);
  }

  /** A copy of the set with some values. */
  public static <T> Set<T> union(Set<T> set, List<T> values) {
    Set<T> more = new HashSet<>(set);
    more.addAll(values);
    return Set.copyOf(more);
  }

  /** A copy of the map with a value under a key, instead of any value under it before. */
  public static <K, V> Map<K, V> with(Map<K, V> map, K key, V value) {
    Map<K, V> more = new HashMap<>(map);
    more.put(key, value);
    return Map.copyOf(more);
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
