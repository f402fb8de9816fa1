package quarterturn.screen;

import java.util.List;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Which;
import quarterturn.session.Overview.Entry;

/** The first and last readings in a trail. */
final class Latest {
  private Latest() {}

  /** The newest reading of a string, or null. */
  static Entry.@Nullable Reading of(List<Entry> trail, Which which) {
    for (int i = trail.size() - 1; i >= 0; i--) {
      if (trail.get(i) instanceof Entry.Reading reading && reading.which() == which) {
        return reading;
      }
    }
    return null;
  }

  /** The newest reading of any string, or null. */
  static Entry.@Nullable Reading of(List<Entry> trail) {
    for (int i = trail.size() - 1; i >= 0; i--) {
      if (trail.get(i) instanceof Entry.Reading reading) {
        return reading;
      }
    }
    return null;
  }

  /** The oldest reading of a string, or null. */
  static Entry.@Nullable Reading first(List<Entry> trail, Which which) {
    for (Entry entry : trail) {
      if (entry instanceof Entry.Reading reading && reading.which() == which) {
        return reading;
      }
    }
    return null;
  }
}
