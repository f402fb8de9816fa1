package quarterturn.session.engine;

import java.time.Instant;
import java.util.AbstractList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.RandomAccess;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.kind.Quantity;
import quarterturn.procedure.kind.Which;
import quarterturn.session.Event;
import quarterturn.session.Lists;

/**
 * A reading taken in the session.
 *
 * @param read the reading's event
 * @param counts whether the strings were at pitch and the neck settled when it was taken
 * @param turnsBefore how many rod turns had been made in this session
 * @param changesBefore how many changes had been made to the instrument in this session
 */
record Reading(Event.Read read, boolean counts, int turnsBefore, int changesBefore) {
  Instant at() {
    return read.at();
  }

  boolean relief() {
    return read.quantity() == Quantity.RELIEF && read.bracket() != null;
  }

  /**
   * Every reading of a session, oldest first, and those of one quantity or string, which are found
   * without looking at all. It never changes.
   */
  static final class All extends AbstractList<Reading> implements RandomAccess {
    static final All NONE = new All(List.of(), Map.of(), Map.of());

    private final List<Reading> all;
    private final Map<On, List<Reading>> apart;
    private final Map<Quantity, Map<String, Reading>> counting;

    /**
     * @param apart the readings of each quantity, and on each string of it by name and by place
     * @param counting the last reading that counts on each string, the oldest first
     */
    private All(
        List<Reading> all,
        Map<On, List<Reading>> apart,
        Map<Quantity, Map<String, Reading>> counting) {
      this.all = all;
      this.apart = apart;
      this.counting = counting;
    }

    /**
     * What is read on which string.
     *
     * @param where its note or its place, or null for any
     */
    private record On(Quantity quantity, @Nullable Object where) {}

    All and(Reading reading) {
      Quantity quantity = reading.read().quantity();
      String string = reading.read().string();
      Which which = reading.read().which();
      Map<On, List<Reading>> more = with(apart, new On(quantity, null), reading);
      more = string == null ? more : with(more, new On(quantity, string), reading);
      more = which == null ? more : with(more, new On(quantity, which), reading);
      Map<Quantity, Map<String, Reading>> last = counting;
      if (reading.counts()) {
        Map<String, Reading> strings = new LinkedHashMap<>(counting(quantity));
        String name = string == null ? "" : string;
        strings.remove(name);
        strings.put(name, reading);
        last = Lists.with(counting, quantity, strings);
      }
      return new All(Lists.with(all, reading), more, last);
    }

    private static Map<On, List<Reading>> with(Map<On, List<Reading>> map, On on, Reading reading) {
      return Lists.with(map, on, Lists.with(map.getOrDefault(on, List.of()), reading));
    }

    List<Reading> of(Quantity quantity) {
      return apart.getOrDefault(new On(quantity, null), List.of());
    }

    List<Reading> on(Quantity quantity, Which which) {
      return apart.getOrDefault(new On(quantity, which), List.of());
    }

    /** Those on a string, or on any for null. */
    List<Reading> on(Quantity quantity, @Nullable String string) {
      return apart.getOrDefault(new On(quantity, string), List.of());
    }

    /** The last reading that counts on each string, by the string's note, the oldest first. */
    Map<String, Reading> counting(Quantity quantity) {
      return counting.getOrDefault(quantity, Map.of());
    }

    @Override
    public Reading get(int index) {
      return all.get(index);
    }

    @Override
    public int size() {
      return all.size();
    }
  }
}
