package quarterturn.session;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import quarterturn.procedure.Fact;
import quarterturn.procedure.Library;
import quarterturn.procedure.Procedure;
import quarterturn.procedure.Results;
import quarterturn.procedure.Step;
import quarterturn.procedure.Ways;

/** What a break has changed: readings gone stale, pitch drifted, a turn to be asked about. */
final class Return {
  private final Library library;
  private final Walk walk;

  Return(Library library, Walk walk) {
    this.library = library;
    this.walk = walk;
  }

  void resumed(State state, State before, Event.Resumed resumed) {
    state.beforeAnswer = null;
    boolean hadFresh = Account.fresh(before) != null;
    boolean turnAhead =
        hadFresh
            && state.waiting == null
            && Ways.turnBeforeReading(
                library.procedure(state.place().procedure()), state.place().step());
    state.away = new State.Break(before.last, resumed.at(), Standing.of(before), hadFresh);
    state.recalling = state.open != null;
    turnedElsewhere(state, resumed.elsewhere());
    state.spoil();
    if (!state.places.isEmpty() && !state.recalling) {
      backToReading(state, turnAhead, Duration.between(before.last, resumed.at()), resumed.at());
    }
  }

  /** What is read from now on shows those turns too, so nothing is learned of the last one here. */
  private static void turnedElsewhere(State state, List<Event.Past> elsewhere) {
    boolean more = elsewhere.size() > state.elsewhere.size();
    state.elsewhere = elsewhere;
    if (more && !state.turns.isEmpty()) {
      List<TurnMade> turns = new ArrayList<>(state.turns);
      turns.add(turns.remove(turns.size() - 1).unsure());
      state.turns = List.copyOf(turns);
    }
  }

  /** A step after which no string is at pitch: it may have been done and not yet said. */
  private boolean slackens(Step step) {
    if (!(step instanceof Step.Tell tell)) {
      return false;
    }
    Results.Change change = library.results().changes().get(String.valueOf(tell.changes()));
    return tell.establishes().contains(Fact.DETUNED)
        || tell.establishes().contains(Fact.NECK_LOOSE)
        || (change != null && change.spoils().contains("pitch"));
  }

  /** After a long break the strings have drifted; before a turn the neck is read anew. */
  private void backToReading(State state, boolean turnAhead, Duration gone, Instant at) {
    Duration drift = Duration.ofMinutes(library.limits().retuneAfterMinutes());
    boolean pitch = state.facts.contains(Fact.AT_PITCH);
    boolean drifted = pitch && (gone.compareTo(drift) > 0 || slackens(walk.step(state)));
    if (drifted) {
      state.withdraw(Fact.AT_PITCH, Fact.SETTLED);
    }
    Step step = walk.step(state);
    boolean settling = step instanceof Step.Wait wait && !wait.rest() && state.waiting != null;
    Procedure procedure = library.procedure(state.place().procedure());
    boolean reading = Ways.readingBeforeTuning(procedure, step.id());
    if (drifted && (turnAhead || reading || settling)) {
      state.waiting = null;
      state.undoAsked = false;
      walk.go(state, walk.retune(state), at);
    } else if (turnAhead) {
      // Where the neck stands then, whether to take a turn back is asked anew.
      state.undoAsked = false;
      walk.go(state, pitch ? procedure.reread() : walk.retune(state), at);
    }
  }
}
