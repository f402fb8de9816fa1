package quarterturn.session;

import java.time.Instant;
import java.util.List;
import java.util.Set;
import quarterturn.craft.Advisor;
import quarterturn.procedure.Condition;
import quarterturn.procedure.Fact;
import quarterturn.procedure.Library;
import quarterturn.procedure.Quantity;
import quarterturn.procedure.Results;
import quarterturn.procedure.Step;
import quarterturn.procedure.Which;

/** A session's state after each event, with all that the checker's situations speak about. */
public final class Exact {
  private final Library library;
  private final Walk walk;
  private final Fold fold;
  private State state;
  private boolean arrived = true;

  /** At its beginning. */
  public Exact(Library library, Advisor advisor, Event.Started started) {
    this.library = library;
    Guard guard = new Guard(library.limits(), advisor);
    this.walk = new Walk(library, guard);
    this.fold = new Fold(library, guard, walk);
    this.state = fold.start(started);
  }

  public void take(Event event) {
    int steps = state.path.size();
    state = fold.apply(state, event);
    arrived = state.path.size() > steps;
  }

  /** Whether the last event has led to a step. */
  public boolean arrived() {
    return arrived;
  }

  /** Whether it stands at a step of a procedure that goes on. */
  public boolean atStep() {
    return !state.places.isEmpty()
        && !state.entering
        && state.refused == null
        && state.fault == null
        && state.ended == null
        && !state.recalling;
  }

  /** Whether somebody took so long after tuning that a reading does not count. */
  public boolean late() {
    Reading last = state.readings.isEmpty() ? null : state.readings.get(state.readings.size() - 1);
    return last != null
        && !last.counts()
        && state.facts.containsAll(Set.of(Fact.AT_PITCH, Fact.SETTLED));
  }

  public Place place() {
    return state.place();
  }

  public Instant at() {
    return state.last;
  }

  public boolean holds(Condition condition) {
    return walk.holds(state, condition, state.last);
  }

  public Set<Fact> facts() {
    return state.facts;
  }

  public boolean turned() {
    return !state.turns.isEmpty();
  }

  /** Whether the rest after a day's turning is due. */
  public boolean dayUsed() {
    return Account.restDue(state, library.limits(), state.last);
  }

  /** What there is of a reading, in the checker's words. */
  public String held(Quantity quantity) {
    List<Reading> readings =
        state.readings.stream()
            .filter(r -> r.read().quantity() == quantity)
            .filter(r -> quantity != Quantity.RELIEF || r.read().which() == Which.LOWEST)
            .toList();
    if (readings.isEmpty()) {
      boolean earlier =
          walk.stages(state, state.last).all().stream()
              .anyMatch(
                  stage ->
                      stage.status().usable()
                          && library.results().of(quantity).stream()
                              .anyMatch(r -> r.id().equals(stage.id())));
      if (earlier) {
        return "FRESH";
      }
      boolean missed =
          Corrections.standing(state.log).stream()
              .anyMatch(e -> e instanceof Event.Read r && r.quantity() == quantity);
      return missed ? "MISSED" : "NEVER";
    }
    Reading last = readings.get(readings.size() - 1);
    if (quantity == Quantity.RELIEF && last.turnsBefore() != state.turns.size()) {
      return "AFTER_TURN";
    }
    boolean spoiled =
        state.changes.subList(last.changesBefore(), state.changes.size()).stream()
            .anyMatch(changed -> spoils(changed, quantity));
    if (spoiled || (last.stale() && rested(last))) {
      return "STALE";
    }
    return last.counts() ? "FRESH" : "UNCOUNTED";
  }

  /** Whether something else than a break has made a reading stale. */
  private boolean rested(Reading last) {
    List<Event> since = state.log.subList(state.log.lastIndexOf(last.read()), state.log.size());
    return since.stream()
        .anyMatch(
            e ->
                (e instanceof Event.Waited w && isRest(w.step()))
                    || (e instanceof Event.Told t && fastens(t.step())));
  }

  private boolean isRest(String id) {
    return library.procedures().values().stream()
        .map(p -> p.steps().get(id))
        .anyMatch(s -> s instanceof Step.TurnRod || (s instanceof Step.Wait w && w.rest()));
  }

  private boolean fastens(String id) {
    return library.procedures().values().stream()
        .map(p -> p.steps().get(id))
        .anyMatch(s -> s instanceof Step.Tell t && t.establishes().contains(Fact.NECK_FAST));
  }

  private boolean spoils(Changed changed, Quantity quantity) {
    Results.Change change = library.results().changes().get(changed.change());
    return change != null
        && library.results().of(quantity).stream().anyMatch(r -> change.spoils().contains(r.id()));
  }
}
