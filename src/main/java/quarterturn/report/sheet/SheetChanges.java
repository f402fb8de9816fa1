package quarterturn.report.sheet;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Library;
import quarterturn.procedure.Limits;
import quarterturn.procedure.Results;
import quarterturn.procedure.kind.Quantity;
import quarterturn.report.SessionSteps;
import quarterturn.session.Event;

/** The changes made in a session and the readings that each of them spoils. */
final class SheetChanges {
  /**
   * A change made in the session.
   *
   * @param index its index among the events
   */
  private record Change(int index, String id) {}

  /** Prefix of the ids of changes that put other strings on. */
  static final String NEW = "new-";

  private final List<Event> events;
  private final Results results;
  private final Limits.Climate climate;
  private final List<Change> changes = new ArrayList<>();

  /**
   * @param events the events that were not withdrawn, oldest first
   * @param library the library, for what each change spoils
   */
  SheetChanges(List<Event> events, SessionSteps steps, Library library) {
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
   * Index of the first change that affects a quantity, or the number of events. New strings do not
   * count: as found is what was read before the first turn with the new strings on.
   */
  int firstTouching(Quantity quantity) {
    for (Change change : changes) {
      if (!change.id().startsWith(NEW) && touches(change.id(), quantity)) {
        return change.index();
      }
    }
    return events.size();
  }

  /**
   * The change that spoiled a reading of {@code quantity} at {@code index}, as a clause, or null.
   */
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

  /**
   * Whether a change affects a quantity; an unknown change affects every quantity read on a string.
   */
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

  /** Whether the weather may have spoiled a reading: long ago, or at another humidity. */
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
