package quarterturn.session.engine;

import java.time.Instant;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Limits;
import quarterturn.procedure.bench.BenchState;
import quarterturn.procedure.kind.Style;
import quarterturn.session.Event;
import quarterturn.session.Lists;
import quarterturn.session.Place;

/**
 * The state that a session's events add up to.
 *
 * @param last when the last event happened
 * @param kind id of the kind, or null while unknown
 * @param style the style, or null while unknown
 * @param accepted ids of the hazards that were accepted
 * @param log every event, oldest first
 * @param before the state before the last answer, for a correction; null where it can't be
 *     withdrawn
 */
record State(
    Event.Started started,
    Instant last,
    @Nullable String kind,
    @Nullable Style style,
    Position position,
    SessionHistory history,
    BenchState bench,
    Pending pending,
    Set<String> accepted,
    List<Event> log,
    @Nullable State before) {
  static State of(Event.Started started, Limits limits) {
    return new State(
        started,
        started.at(),
        started.kind(),
        started.style(),
        Position.NOWHERE,
        SessionHistory.of(started, limits),
        BenchState.NONE,
        Pending.NOTHING,
        Set.of(),
        List.of(started),
        null);
  }

  /** Whether the last answer, or the turn that is asked for, can be withdrawn. */
  boolean correctable() {
    return !pending.recalling() && (pending.open() != null || before != null);
  }

  Place place() {
    return position.place();
  }

  /** Id of the present procedure, which may be yet to be entered. */
  String procedure() {
    return position.nowhere() ? started.procedure() : place().procedure();
  }

  /** Whether the present step is asked, and not a question of the engine's own. */
  boolean atStep() {
    return pending.ended() == null
        && pending.away() == null
        && !position.entering()
        && !position.nowhere();
  }

  /** This state with one more event in its log. */
  State and(Event event) {
    return logging(Lists.with(log, event));
  }

  State with(@Nullable String newKind, @Nullable Style newStyle) {
    return new State(
        started, last, newKind, newStyle, position, history, bench, pending, accepted, log, before);
  }

  State with(Position now) {
    return new State(
        started, last, kind, style, now, history, bench, pending, accepted, log, before);
  }

  State with(SessionHistory now) {
    return new State(
        started, last, kind, style, position, now, bench, pending, accepted, log, before);
  }

  State with(BenchState now) {
    return new State(
        started, last, kind, style, position, history, now, pending, accepted, log, before);
  }

  State with(Pending now) {
    return new State(
        started, last, kind, style, position, history, bench, now, accepted, log, before);
  }

  State accepting(Set<String> hazards) {
    return new State(
        started, last, kind, style, position, history, bench, pending, hazards, log, before);
  }

  /** This state, from which a correction leads back to {@code earlier}. */
  State backTo(@Nullable State earlier) {
    return new State(
        started, last, kind, style, position, history, bench, pending, accepted, log, earlier);
  }

  /** This state with another log, as after a correction. */
  State logging(List<Event> events) {
    Instant at = events.get(events.size() - 1).at();
    return new State(
        started, at, kind, style, position, history, bench, pending, accepted, events, before);
  }
}
