package quarterturn.session.engine;

import java.time.Duration;
import java.time.Instant;
import java.util.Set;
import quarterturn.procedure.Fact;
import quarterturn.procedure.Library;
import quarterturn.procedure.Step;
import quarterturn.procedure.bench.BenchState;
import quarterturn.procedure.bench.Detours;
import quarterturn.procedure.bench.Freshness;
import quarterturn.procedure.kind.Quantity;
import quarterturn.session.Carried;
import quarterturn.session.Event;

/**
 * Finds what a break changed: readings gone stale, pitch that drifted, a turn to be asked about.
 */
record Return(Library library, Walk walk) {
  State resumed(State state, State before, Event.Resumed resumed) {
    BenchState left = before.bench();
    boolean fresh = left.held(Quantity.RELIEF) == Freshness.FRESH;
    Pending.Break away = new Pending.Break(before.last(), resumed.at(), Standing.of(before), fresh);
    boolean recalling = state.pending().open() != null;
    State now =
        state
            .with(pending(state, resumed).away(away).recalling(recalling))
            .with(state.history().by(resumed.at()).resumed(resumed).allSpoiled())
            // Glasses were taken off, and another may be at the bench.
            .accepting(Set.of())
            .with(left.back(false));
    return now.position().nowhere() || recalling ? now : goOn(now, before, resumed.at());
  }

  /** What is under way; a wait begins anew where the clock does not tell how much of it is over. */
  private Pending pending(State state, Event.Resumed resumed) {
    Carried carried = resumed.carried();
    Event.WaitBegan waiting = state.pending().waiting();
    boolean untold = carried != null && carried.doubts(resumed.at());
    boolean further =
        waiting != null && waiting.until().isAfter(resumed.at().plus(lasting(waiting)));
    return further || untold ? state.pending().waiting(null) : state.pending();
  }

  /**
   * How long a wait lasts; what began by a wrong clock of another session is no longer than that.
   */
  private Duration lasting(Event.WaitBegan wait) {
    Duration lasting = Duration.between(wait.at(), wait.until());
    return library.limits().clocks().leaps(wait.at(), wait.until()) ? Duration.ZERO : lasting;
  }

  private State goOn(State state, State before, Instant at) {
    Step step = walk.step(state);
    BenchState left = before.bench();
    // Where the clock was set back, nobody knows how long it was.
    Duration gone = Duration.between(before.last(), at).abs();
    Duration drift = Duration.ofMinutes(library.limits().retuneAfterMinutes());
    boolean drifted =
        left.has(Fact.AT_PITCH)
            && (gone.compareTo(drift) > 0 || Detours.slackens(library.results(), step, left));
    State now = state.with(left.back(drifted));
    String to =
        new Detours(library.procedure(state.place().procedure()))
            .afterBreak(step, left, drifted, state.pending().waiting() != null);
    if (to == null) {
      return now;
    }
    // Where the neck stands then, whether to take a turn back is asked anew.
    Pending pending = now.pending().undoForgotten();
    return walk.go(now.with(drifted ? pending.waiting(null) : pending), to, at);
  }
}
