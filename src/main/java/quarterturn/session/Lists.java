package quarterturn.session;

import java.util.AbstractList;
import java.util.AbstractMap;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.RandomAccess;
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

  /**
   * A list that never changes, to which one more element is added without copying it: the longer
   * list shares all but a few elements with the shorter. So a session keeps what it was after each
   * answer in little more space than its last state takes.
   *
   * @param <T> the type of the elements
   */
  private static final class Grown<T> extends AbstractList<T> implements RandomAccess {
    private static final int BITS = 5;
    private static final int FULL = 1 << BITS;

    private final Object[][] parts;
    private final Object[] rest;

    /**
     * @param parts arrays of {@link #FULL} elements each, the first ones
     * @param rest the elements after them, fewer
     */
    private Grown(Object[][] parts, Object[] rest) {
      this.parts = parts;
      this.rest = rest;
    }

    /** The list with a value at its end. */
    static <T> List<T> with(List<T> list, T value) {
      return (list instanceof Grown<T> grown ? grown : copied(list)).and(value);
    }

    private static <T> Grown<T> copied(List<T> list) {
      Grown<T> copy = new Grown<>(new Object[0][], new Object[0]);
      for (T one : list) {
        copy = copy.and(one);
      }
      return copy;
    }

    private Grown<T> and(T value) {
      Object[] more = Arrays.copyOf(rest, rest.length + 1);
      more[rest.length] = Objects.requireNonNull(value);
      if (more.length < FULL) {
        return new Grown<>(parts, more);
      }
      Object[][] all = Arrays.copyOf(parts, parts.length + 1);
      all[parts.length] = more;
      return new Grown<>(all, new Object[0]);
    }

    @Override
    @SuppressWarnings("unchecked") // only elements of the type were put in
    public T get(int index) {
      int part = Objects.checkIndex(index, size()) >> BITS;
      return (T) (part < parts.length ? parts[part] : rest)[index & (FULL - 1)];
    }

    @Override
    public int size() {
      return parts.length * FULL + rest.length;
    }
  }

  /**
   * A map that never changes, to which a value is added without copying all of it: what was put
   * last lies in a small map over a larger one, which many maps share.
   *
   * @param <K> the type of the keys
   * @param <V> the type of the values
   */
  private static final class Layered<K, V> extends AbstractMap<K, V> {
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
}
