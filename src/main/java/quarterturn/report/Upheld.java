package quarterturn.report;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import quarterturn.session.Event;

/** Which events still count once corrections are taken into account. */
final class Upheld {
  private Upheld() {}

  /** {@code events} without the corrections and without the answers they withdraw. */
  static List<Event> of(List<Event> events) {
    List<Event> upheld = new ArrayList<>();
    for (Event event : events) {
      if (event instanceof Event.Corrected corrected) {
        Event gone = withdrawn(upheld, corrected);
        if (gone != null) {
          upheld.remove(upheld.lastIndexOf(gone));
        }
      } else {
        upheld.add(event);
      }
    }
    return upheld;
  }

  /** The answer that a correction takes back: the last one given at its step, or null. */
  static @Nullable Event withdrawn(List<Event> before, Event.Corrected correction) {
    for (int i = before.size() - 1; i >= 0; i--) {
      if (correction.step().equals(answeredStep(before.get(i)))) {
        return before.get(i);
      }
    }
    return null;
  }

  private static @Nullable String answeredStep(Event event) {
    if (event instanceof Event.Told told) {
      return told.step();
    }
    if (event instanceof Event.Chose chose) {
      return chose.step();
    }
    if (event instanceof Event.Read read) {
      return read.step();
    }
    if (event instanceof Event.Turned turned) {
      return turned.step();
    }
    if (event instanceof Event.Waited waited) {
      return waited.step();
    }
    if (event instanceof Event.Recalled recalled) {
      return recalled.step();
    }
    return event instanceof Event.UndoAsked asked ? asked.step() : null;
  }
}
