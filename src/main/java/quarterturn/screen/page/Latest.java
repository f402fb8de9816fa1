package quarterturn.screen.page;

import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.kind.Which;
import quarterturn.session.Overview.Entry;

/** Finds the first and last readings in a trail. */
final class Latest {
  private Latest() {}

  /** The newest reading of a string, or null. */
  static Entry.@Nullable Reading of(List<Entry> trail, Which which) {
    return last(readings(trail).filter(reading -> reading.which() == which));
  }

  /** The newest reading of any string, or null. */
  static Entry.@Nullable Reading of(List<Entry> trail) {
    return last(readings(trail));
  }

  /** The oldest reading of a string, or null. */
  static Entry.@Nullable Reading first(List<Entry> trail, Which which) {
    return readings(trail).filter(one -> one.which() == which).findFirst().orElse(null);
  }

  private static Stream<Entry.Reading> readings(List<Entry> trail) {
    return trail.stream().filter(Entry.Reading.class::isInstance).map(Entry.Reading.class::cast);
  }

  private static Entry.@Nullable Reading last(Stream<Entry.Reading> readings) {
    return readings.reduce((one, next) -> next).orElse(null);
  }
}
