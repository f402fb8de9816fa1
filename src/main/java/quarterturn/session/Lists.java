package quarterturn.session;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;

/** Lists, sets and maps with one thing more, the old ones staying as they are; and searches. */
public final class Lists {
  private Lists() {}

  /** The list with a value behind the others. */
  public static <T> List<T> with(List<T> list, T value) {
    List<T> more = new ArrayList<>(list);
    more.add(value);
    return List.copyOf(more);
  }

  /** The set and a value. */
  public static <T> Set<T> with(Set<T> set, T value) {
    Set<T> more = new HashSet<>(set);
    more.add(value);
    return Set.copyOf(more);
  }

  /** The map with a value under a key, in place of what stood there. */
  public static <K, V> Map<K, V> with(Map<K, V> map, K key, V value) {
    Map<K, V> more = new HashMap<>(map);
    more.put(key, value);
    return Map.copyOf(more);
  }

  /** The last of a list that fits, or null. */
  public static <T> @Nullable T last(List<T> list, Predicate<T> fits) {
    for (int i = list.size() - 1; i >= 0; i--) {
      if (fits.test(list.get(i))) {
        return list.get(i);
      }
    }
    return null;
  }
}
