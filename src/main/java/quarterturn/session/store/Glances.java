package quarterturn.session.store;

import java.time.Instant;
import java.util.List;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.kind.Quantity;
import quarterturn.session.Corrections;
import quarterturn.session.Event;
import quarterturn.session.engine.EngineQuestions;
import quarterturn.session.journal.Journal;

/** Makes a {@link Store.Glance} from a session's journal. */
final class Glances {
  private Glances() {}

  static Store.Glance of(String name, Journal.Contents contents) {
    List<Event> events = Corrections.standing(contents.events());
    Event.Started started = last(events, Event.Started.class, e -> true);
    Event.Chose kind = last(events, Event.Chose.class, e -> e.step().equals(EngineQuestions.KIND));
    Event.Left left = last(events, Event.Left.class, e -> true);
    Event waiting = last(events, Event.class, Glances::waits);
    Journal.Header header = contents.header();
    return new Store.Glance(
        name,
        header == null ? null : header.procedure(),
        started == null ? null : started.instrument(),
        kind != null ? kind.option() : started == null ? null : started.kind(),
        at(started),
        at(last(events, Event.class, e -> true)),
        last(events, Event.Ended.class, e -> true),
        left == null ? null : left.standing(),
        waiting instanceof Event.WaitBegan wait ? wait.until() : null,
        contents.notice(),
        contents.damaged(),
        at(last(events, Event.OnRod.class, e -> e.changes() != null)),
        at(last(events, Event.Read.class, e -> e.quantity() == Quantity.RELIEF && !e.missing())),
        at(last(events, Event.Discarded.class, e -> true)));
  }

  /** Whether a wait begins or ends with an event. */
  private static boolean waits(Event event) {
    return event instanceof Event.WaitBegan
        || event instanceof Event.Waited
        || event instanceof Event.Ended;
  }

  private static <E extends Event> @Nullable E last(
      List<Event> events, Class<E> kind, Predicate<E> fits) {
    return events.stream()
        .filter(kind::isInstance)
        .map(kind::cast)
        .filter(fits)
        .reduce(null, (one, other) -> other);
  }

  private static @Nullable Instant at(@Nullable Event event) {
    return event == null ? null : event.at();
  }

  /** The glance for a file that can't be read. */
  static Store.Glance unreadable(String name, String notice) {
    return new Store.Glance(
        name, null, null, null, null, null, null, null, null, notice, true, null, null, null);
  }
}
