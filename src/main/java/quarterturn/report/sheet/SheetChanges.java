package quarterturn.report.sheet;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Library;
import quarterturn.procedure.Limits;
import quarterturn.procedure.Results;
import quarterturn.procedure.kind.Quantity;
import quarterturn.session.Event;

/** What was changed while a session lasted, and which readings that spoils. */
final class SheetChanges {
  /**
   * A change.
   *
   * @param index where it stands among the events
   */
  private record Change(int index, String id) {}

  private final List<Event> events;
  private final Results results;
  private final Limits.Climate climate;
  private final List<Change> changes = new ArrayList<>();

  /**
   * @param events those that stand, oldest first
   * @param library what spoils what
   */
  SheetChanges(List<Event> events, SheetSteps steps, Library library) {
    this.events = events;
    this.results = library.results();
    this.climate = library.limits().climate();
    for (int i = 0; i < events.size(); i++) {
      String id = steps.change(events.get(i));
      if (id != null) {
        changes.add(new Change(i, id));
      }
    }
  }

  /**
   * Where the first work that touches a quantity stands, or the number of events. New strings are
   * no work on the instrument: what is read before its first turn is as found, with them on.
   */
  int firstTouching(Quantity quantity) {
    for (Change change : changes) {
      if (!change.id().startsWith(SheetSteps.NEW) && touches(change.id(), quantity)) {
        return change.index();
      }
    }
    return events.size();
  }

  /** What spoiled a reading of {@code quantity} at {@code index}, as a clause, or null. */
  @Nullable String spoiled(Quantity quantity, int index) {
    for (Change change : changes) {
      if (change.index() > index && touches(change.id(), quantity)) {
        return name(change.id());
      }
    }
    boolean other = touches(Results.CLIMATE, quantity) && climate(index);
    return other ? name(Results.CLIMATE) : null;
  }

  private String name(String id) {
    Results.Change change = results.changes().get(id);
    return change == null ? id.replace('-', ' ') : change.name();
  }

  /** A change that nothing is known of may have touched everything on the strings. */
  private boolean touches(String id, Quantity quantity) {
    if (!quantity.onString()) {
      return false;
    }
    if (!results.changes().containsKey(id)) {
      return true;
    }
    // The quantity's own result is its first; the others are verdicts on the same readings.
    return results.of(quantity).stream()
        .limit(1)
        .anyMatch(result -> results.spoils(id, result.id()));
  }

  /** Whether much time went by after a reading, or the air became another. */
  private boolean climate(int index) {
    Instant last = events.get(events.size() - 1).at();
    if (events.get(index).at().plus(climate.after()).isBefore(last)) {
      return true;
    }
    Double then = null;
    for (int i = 0; i < events.size(); i++) {
      if (events.get(i) instanceof Event.Read air
          && air.quantity() == Quantity.HUMIDITY
          && air.value() != null) {
        if (i <= index) {
          then = air.value();
        } else if (then != null && Math.abs(air.value() - then) > climate.points()) {
          return true;
        }
      }
    }
    return false;
  }
}
