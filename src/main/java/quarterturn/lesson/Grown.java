package quarterturn.lesson;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Lists and maps with one thing more; the old ones stay as they are. */
final class Grown {
  private Grown() {}

  static <T> List<T> with(List<T> list, T value) {
    List<T> more = new ArrayList<>(list);
    more.add(value);
    return List.copyOf(more);
  }

  static <K, V> Map<K, V> with(Map<K, V> map, K key, V value) {
    Map<K, V> more = new HashMap<>(map);
    more.put(key, value);
    return Map.copyOf(more);
  }
}
