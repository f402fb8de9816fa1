package quarterturn.session.engine;

import java.time.Instant;
import java.util.Set;
import quarterturn.craft.rod.Advisor;
import quarterturn.procedure.Fact;
import quarterturn.procedure.Library;
import quarterturn.procedure.bench.BenchState;
import quarterturn.procedure.bench.Freshness;
import quarterturn.procedure.condition.Condition;
import quarterturn.procedure.kind.Quantity;
import quarterturn.session.Event;
import quarterturn.session.Place;

/** A session's state after each event, with all that the checker's situations speak about. */
public final class Exact {
  private final Library library;
  private final Walk walk;
  private final Fold fold;
  private State state;
  private boolean arrived = true;

  /** A session at its beginning. */
  public Exact(Library library, Advisor advisor, Event.Started started) {
    this.library = library;
    Guard guard = new Guard(library.limits(), advisor);
    this.walk = new Walk(library, guard);
    this.fold = new Fold(library, walk);
    this.state = fold.start(started);
  }

  public void take(Event event) {
    int steps = state.position().path().size();
    state = fold.apply(state, event);
    arrived = state.position().path().size() > steps;
  }

  /** Whether the last event has led to a step. */
  public boolean arrived() {
    return arrived;
  }

  /** Whether the session stands at a step of a procedure that goes on. */
  public boolean atStep() {
    return !state.position().nowhere()
        && !state.position().entering()
        && state.pending().refused() == null
        && state.pending().fault() == null
        && state.pending().ended() == null
        && !state.pending().recalling();
  }

  /** Whether somebody took so long after tuning that a reading does not count. */
  public boolean late() {
    Reading last =
        state.history().readings().isEmpty()
            ? null
            : state.history().readings().get(state.history().readings().size() - 1);
    return last != null
        && !last.counts()
        && state.bench().hasAll(Set.of(Fact.AT_PITCH, Fact.SETTLED));
  }

  public Place place() {
    return state.place();
  }

  public Instant at() {
    return state.last();
  }

  public boolean holds(Condition condition) {
    return walk.holds(state, condition, state.last());
  }

  /** Whether the rest after a day's turning is due. */
  public boolean dayUsed() {
    return state.history().restDue(state.last());
  }

  public BenchState bench() {
    return state.bench();
  }

  /** What there is of a reading; where this session asked for none, it may be an earlier one. */
  public Freshness held(Quantity quantity) {
    Freshness held = state.bench().held(quantity);
    boolean earlier =
        (held == Freshness.NEVER || held == Freshness.MISSED)
            && walk.stages(state, state.last()).all().stream()
                .filter(stage -> stage.status().usable())
                .anyMatch(stage -> reads(stage.id(), quantity));
    return earlier ? Freshness.FRESH : held;
  }

  private boolean reads(String result, Quantity quantity) {
    return library.results().of(quantity).stream().anyMatch(r -> r.id().equals(result));
  }
}
