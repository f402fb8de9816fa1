package quarterturn.session;

import java.util.AbstractList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.RandomAccess;

/**
 * A list that never changes, to which one more element is added without copying it: the longer list
 * shares all but a few elements with the shorter. So a session keeps what it was after each answer
 * in little more space than its last state takes.
 *
 * @param <T> the type of the elements
 */
final class Grown<T> extends AbstractList<T> implements RandomAccess {
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
