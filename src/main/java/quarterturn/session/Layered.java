package quarterturn.session;

import java.util.AbstractMap;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * A map that never changes, to which a value is added without copying all of it: what was put last
 * lies in a small map over a larger one, which many maps share.
 *
 * @param <K> the type of the keys
 * @param <V> the type of the values
 */
final class Layered<K, V> extends AbstractMap<K, V> {
  private static final int MOST = 16;

  private final Map<K, V> under;
  private final Map<K, V> over;

  private Layered(Map<K, V> under, Map<K, V> over) {
    this.under = under;
    this.over = over;
  }

  /** The map with a value under a key, instead of any value under it before. */
  static <K, V> Map<K, V> with(Map<K, V> map, K key, V value) {
    Layered<K, V> old =
        map instanceof Layered<K, V> layered ? layered : new Layered<>(Map.copyOf(map), Map.of());
    Map<K, V> over = new HashMap<>(old.over);
    over.put(key, value);
    if (over.size() <= MOST) {
      return new Layered<>(old.under, Map.copyOf(over));
    }
    Map<K, V> under = new HashMap<>(old.under);
    under.putAll(over);
    return new Layered<>(Map.copyOf(under), Map.of());
  }

  @Override
  public @Nullable V get(@Nullable Object key) {
    if (key == null) {
      return null;
    }
    V value = over.get(key);
    return value == null ? under.get(key) : value;
  }

  @Override
  public boolean containsKey(@Nullable Object key) {
    return get(key) != null;
  }

  @Override
  public Set<Entry<K, V>> entrySet() {
    Map<K, V> all = new HashMap<>(under);
    all.putAll(over);
    return Map.copyOf(all).entrySet();
  }
}
