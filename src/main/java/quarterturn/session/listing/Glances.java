package quarterturn.session.listing;

import java.time.Instant;
import java.util.List;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.kind.Quantity;
import quarterturn.session.Corrections;
import quarterturn.session.Event;
import quarterturn.session.PastTurns;
import quarterturn.session.engine.EngineQuestions;
import quarterturn.session.journal.Journal;
import quarterturn.unit.Turn;

/** Makes a {@link Glance} from a session's journal. */
public final class Glances {
  private Glances() {}

  public static Glance of(String name, Journal.Contents contents) {
    List<Event> events = Corrections.standing(contents.events());
    Event.Started started = last(events, Event.Started.class, e -> true);
    Event.Chose kind = last(events, Event.Chose.class, e -> e.step().equals(EngineQuestions.KIND));
    Event newest = last(events, Event.class, e -> true);
    Event.Offered half = PastTurns.open(contents.events());
    Event waiting = last(events, Event.class, Glances::waits);
    Journal.Header header = contents.header();
    return new Glance(
        name,
        header == null ? null : header.procedure(),
        started == null ? null : started.instrument(),
        kind != null ? kind.option() : started == null ? null : started.kind(),
        at(started),
        at(newest),
        shortly(last(events, Event.Ended.class, e -> true)),
        newest instanceof Event.Left left
            ? left.standing()
            : newest instanceof Event.Discarded discarded ? discarded.standing() : null,
        waiting instanceof Event.WaitBegan wait ? wait.until() : null,
        contents.notice(),
        contents.damaged(),
        at(last(events, Event.OnRod.class, e -> e.changes() != null)),
        at(last(events, Event.class, Glances::reads)),
        at(last(events, Event.Discarded.class, e -> true)),
        half == null ? null : half.turn(),
        half != null || last(events, Event.class, Glances::turnsOrReads) instanceof Event.OnRod,
        by(events),
        rod(events));
  }

  private static Glance.Rod rod(List<Event> events) {
    List<Event.OnRod> moves =
        events.stream()
            .filter(Event.OnRod.class::isInstance)
            .map(Event.OnRod.class::cast)
            .filter(rod -> rod.changes() != null)
            .toList();
    double net = moves.stream().mapToDouble(rod -> rod.moved().turns()).sum();
    return new Glance.Rod(moves.size(), new Turn(net), moves.stream().allMatch(Event.OnRod::sure));
  }

  /** An end without the words of it, which no list shows. */
  private static Event.@Nullable Ended shortly(Event.@Nullable Ended end) {
    return end == null ? null : new Event.Ended(end.at(), "", end.handOver(), end.outcome(), "");
  }

  private static boolean turnsOrReads(Event event) {
    return (event instanceof Event.OnRod rod && rod.changes() != null) || reads(event);
  }

  private static boolean reads(Event event) {
    return event instanceof Event.Read read
        && read.quantity() == Quantity.RELIEF
        && !read.missing();
  }

  /** Who was named last of those who worked. */
  public static @Nullable String by(List<Event> events) {
    String by = null;
    for (Event event : events) {
      String named =
          event instanceof Event.Started started
              ? started.by()
              : event instanceof Event.Resumed resumed ? resumed.by() : null;
      by = named == null ? by : named;
    }
    return by;
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
}
