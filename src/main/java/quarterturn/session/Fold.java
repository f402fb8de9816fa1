package quarterturn.session;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import quarterturn.craft.Window;
import quarterturn.procedure.Branch;
import quarterturn.procedure.Fact;
import quarterturn.procedure.Feel;
import quarterturn.procedure.Kind;
import quarterturn.procedure.Library;
import quarterturn.procedure.Procedure;
import quarterturn.procedure.Quantity;
import quarterturn.procedure.Step;
import quarterturn.procedure.Style;
import quarterturn.procedure.Ways;
import quarterturn.unit.Turn;

/** Takes one event into a state. Pure: the same events always add up to the same state. */
final class Fold {
  /** Steps that ask nothing may follow each other so often; more is a loop without an end. */
  private static final int MOST_SILENT = 100;

  private final Library library;
  private final Guard guard;

  Fold(Library library, Guard guard) {
    this.library = library;
    this.guard = guard;
  }

  /** A step of a procedure as a key. */
  static String key(String procedure, String step) {
    return procedure + "/" + step;
  }

  State start(Event.Started started) {
    State state = new State(started);
    state.log = List.of(started);
    enterWhenReady(state);
    return state;
  }

  /**
   * The state after {@code event}.
   *
   * @throws Astray when the event does not belong here, as after a change of the procedure
   */
  State apply(State before, Event event) {
    if (event instanceof Event.Corrected) {
      return correct(before, event);
    }
    State state = before.copy(event.at());
    state.log = state.with(before.log, event);
    if (event instanceof Event.Accepted accepted) {
      state.accepted = state.with(before.accepted, accepted.hazard());
      accepted(state, event.at());
    } else if (event instanceof Event.Told told) {
      told(state, told, before);
    } else if (event instanceof Event.Chose chose) {
      state.beforeAnswer = before;
      chose(state, chose);
    } else if (event instanceof Event.Read read) {
      state.beforeAnswer = before;
      read(state, read);
    } else if (event instanceof Event.Offered offered) {
      state.open = offered;
    } else if (event instanceof Event.UndoAsked) {
      undoAsked(state, event.at());
    } else if (event instanceof Event.Turned turned) {
      state.beforeAnswer = reported(before);
      turned(state, turned);
    } else if (event instanceof Event.Recalled recalled) {
      state.beforeAnswer = null;
      recalled(state, recalled);
    } else if (event instanceof Event.WaitBegan began) {
      state.waiting = began;
    } else if (event instanceof Event.Waited waited) {
      state.beforeAnswer = before;
      waited(state, waited);
    } else if (event instanceof Event.Resumed resumed) {
      resumed(state, before, resumed);
    } else if (event instanceof Event.Ended ended) {
      state.ended = ended;
      state.beforeAnswer = null;
    }
    return state;
  }

  /**
   * What a report of a turn is taken back to: not the turn, which must not be shown twice, but the
   * question whether it was made.
   */
  private static State reported(State before) {
    State again = before.copy(before.last);
    again.beforeAnswer = null;
    again.recalling = true;
    return again;
  }

  private static State correct(State before, Event event) {
    if (!before.correctable()) {
      throw new Astray("there is no answer to take back");
    }
    if (before.open != null) {
      // The rod may have been turned already: asked for again, it would be turned twice.
      State asked = reported(before).copy(event.at());
      asked.log = asked.with(before.log, event);
      return asked;
    }
    if (before.beforeAnswer == null) {
      throw new Astray("there is no answer to take back");
    }
    State state = before.beforeAnswer.copy(event.at());
    state.log = state.with(before.log, event);
    // A hazard once shown stays shown.
    state.accepted = before.accepted;
    return state;
  }

  /** Before a turn the reading may have grown old while its hazards were read. */
  private void accepted(State state, Instant at) {
    if (state.open == null && step(state) instanceof Step.TurnRod turn) {
      Place to = toReading(state, turn, at);
      if (to != null) {
        go(state, to.step(), at);
      }
    }
  }

  private void told(State state, Event.Told told, State before) {
    if (state.away != null && told.step().equals(Own.RESUME)) {
      state.away = null;
      return;
    }
    state.beforeAnswer = before;
    Step.Tell step = expect(state, told.step(), Step.Tell.class);
    state.establish(without(step.establishes(), Fact.SETTLED), told.at());
    go(state, step.then(), told.at(), null);
  }

  private void chose(State state, Event.Chose chose) {
    if (chose.step().equals(Own.KIND)) {
      state.kind = chose.option();
      enterWhenReady(state);
      return;
    }
    if (chose.step().equals(Own.STYLE)) {
      for (Style style : Style.values()) {
        state.style = style.word().equals(chose.option()) ? style : state.style;
      }
      enterWhenReady(state);
      return;
    }
    Step.Choose step = expect(state, chose.step(), Step.Choose.class);
    state.chosen =
        state.with(state.chosen, key(state.place().procedure(), step.id()), chose.option());
    for (Step.Option option : step.options()) {
      if (option.id().equals(chose.option())) {
        state.establish(without(option.establishes(), Fact.SETTLED), chose.at());
        go(state, option.go(), chose.at());
        return;
      }
    }
    throw new Astray("step " + step.id() + " has no answer " + chose.option());
  }

  private void read(State state, Event.Read read) {
    Step.Measure step = expect(state, read.step(), Step.Measure.class);
    if (!read.missing()) {
      boolean counts =
          read.quantity() != Quantity.RELIEF || Account.ready(state, library.limits(), read.at());
      state.readings =
          state.with(state.readings, new Reading(read, counts, state.turns.size(), false));
    }
    go(state, step.then(), read.at(), read);
  }

  /** To take a loosening back is to tighten, so the strings are detuned first. */
  private void undoAsked(State state, Instant at) {
    state.undoAsked = true;
    state.open = null;
    TurnMade last = Account.lastMoved(state);
    boolean tightens = last != null && last.turn().turns() < 0;
    if (tightens && !state.facts.contains(Fact.DETUNED)) {
      Procedure procedure = library.procedure(state.place().procedure());
      for (Step step : procedure.steps().values()) {
        boolean detunes =
            step instanceof Step.Tell tell && tell.establishes().contains(Fact.DETUNED);
        if (detunes && Ways.undoNext(procedure, step.id())) {
          go(state, step.id(), at);
          return;
        }
      }
    }
  }

  private void turned(State state, Event.Turned turned) {
    Step.TurnRod step = expect(state, turned.step(), Step.TurnRod.class);
    made(state, turned.at(), turned.turn(), turned.feel(), true);
    go(state, onFeel(step, turned.feel()), turned.at());
  }

  private void made(State state, Instant at, Turn turn, Feel feel, boolean sure) {
    Turn asked = state.open == null ? turn : state.open.turn();
    Kind kind = kind(state);
    Window window = window(state);
    Prompt.Expected expected =
        kind == null || window == null ? null : guard.expected(state, kind, window, turn);
    state.turns = state.with(state.turns, new TurnMade(at, turn, asked, feel, sure, expected));
    state.open = null;
    state.undoAsked = false;
    state.putOff = 0;
    if (turn.turns() != 0) {
      state.withdraw(Fact.AT_PITCH, Fact.SETTLED);
    }
  }

  private void recalled(State state, Event.Recalled recalled) {
    Step.TurnRod step = expect(state, recalled.step(), Step.TurnRod.class);
    state.recalling = false;
    Feel feel = recalled.feel();
    if (recalled.turned().turns() == 0 && feel == null) {
      state.open = null;
      state.undoAsked = false;
      go(state, retune(state), recalled.at());
    } else {
      Feel felt = feel == null ? Feel.SMOOTH : feel;
      made(state, recalled.at(), recalled.turned(), felt, recalled.sure());
      go(state, onFeel(step, felt), recalled.at());
    }
  }

  private void waited(State state, Event.Waited waited) {
    state.waiting = null;
    Step step = step(state);
    if (step instanceof Step.TurnRod) {
      // The daily rest the limits put before a turn: afterwards the neck is read anew.
      lift(state, waited);
      state.spoil();
      arrive(state, waited.at());
      return;
    }
    Step.Wait wait = expect(state, waited.step(), Step.Wait.class);
    if (wait.rest()) {
      lift(state, waited);
    }
    boolean settled =
        waited.reason() != null
            || (state.atPitchSince != null
                && !waited.at().isBefore(state.atPitchSince.plus(settle())));
    state.establish(
        settled ? wait.establishes() : without(wait.establishes(), Fact.SETTLED), waited.at());
    if (wait.rest()) {
      state.spoil();
    }
    go(state, wait.go(), waited.at());
  }

  private static void lift(State state, Event.Waited waited) {
    if (waited.reason() != null) {
      state.lifted = new State.Lifted(waited.at(), state.turns.size());
    }
  }

  private Duration settle() {
    return Duration.ofMinutes(library.limits().settleMinutes());
  }

  private void resumed(State state, State before, Event.Resumed resumed) {
    state.beforeAnswer = null;
    boolean hadFresh = Account.fresh(before) != null;
    boolean turnAhead =
        hadFresh
            && state.waiting == null
            && Ways.turnBeforeReading(
                library.procedure(state.place().procedure()), state.place().step());
    state.away = new State.Break(before.last, resumed.at(), Standing.of(before), turnAhead);
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

  /** After a long break the strings have drifted; before a turn the neck is read anew. */
  private void backToReading(State state, boolean turnAhead, Duration gone, Instant at) {
    Duration drift = Duration.ofMinutes(library.limits().retuneAfterMinutes());
    boolean pitch = state.facts.contains(Fact.AT_PITCH);
    boolean drifted = pitch && gone.compareTo(drift) > 0;
    if (drifted) {
      state.withdraw(Fact.AT_PITCH, Fact.SETTLED);
    }
    Step step = step(state);
    boolean reading = step instanceof Step.Measure measure && measure.quantity().bracket();
    boolean settling = step instanceof Step.Wait wait && !wait.rest() && state.waiting != null;
    Procedure procedure = library.procedure(state.place().procedure());
    if (drifted && (turnAhead || reading || settling)) {
      state.waiting = null;
      go(state, retune(state), at);
    } else if (turnAhead) {
      go(state, pitch ? procedure.reread() : retune(state), at);
    }
  }

  /** Where the strings are brought to pitch: on a neck that is loose, where it is seated first. */
  private String retune(State state) {
    Procedure procedure = library.procedure(state.place().procedure());
    if (state.facts.contains(Fact.NECK_LOOSE)) {
      for (Step step : procedure.steps().values()) {
        if (step instanceof Step.Tell tell && tell.establishes().contains(Fact.NECK_FAST)) {
          return step.id();
        }
      }
    }
    return procedure.retune();
  }

  private static String onFeel(Step.TurnRod step, Feel feel) {
    String go = step.felt().get(feel);
    if (go == null) {
      throw new Astray("step " + step.id() + " says nothing about " + feel.word());
    }
    return go;
  }

  private void enterWhenReady(State state) {
    if (state.kind != null && state.style != null && state.places.isEmpty()) {
      Procedure procedure = library.procedure(state.started.procedure());
      state.places = List.of(new Place(procedure.id(), procedure.begin()));
      arrive(state, state.last);
    }
  }

  private void go(State state, Branch.Fork fork, Instant at, Event.@Nullable Read just) {
    String step = new Judge(state, window(state), at, just).choose(fork);
    if (step == null) {
      state.fault = "step " + state.place().step() + " has no way on for this answer";
    } else {
      go(state, step, at);
    }
  }

  private void go(State state, String step, Instant at) {
    state.move(new Place(state.place().procedure(), step));
    arrive(state, at);
  }

  /** Enters the present step and walks on through those that ask nothing. */
  private void arrive(State state, Instant at) {
    for (int silent = 0; silent < MOST_SILENT; silent++) {
      Place place = state.place();
      String key = key(place.procedure(), place.step());
      state.reached = state.with(state.reached, key, state.reached.getOrDefault(key, 0) + 1);
      state.path = state.with(state.path, place);
      Place next = onward(state, at);
      if (next == null) {
        return;
      }
      if (!next.procedure().equals(place.procedure())) {
        continue;
      }
      state.move(next);
    }
    state.fault = "step " + state.place().step() + " stands in a loop without an end";
  }

  /** Where a step that asks nothing leads, or null where the present step asks something. */
  private @Nullable Place onward(State state, Instant at) {
    String procedure = state.place().procedure();
    Step step = step(state);
    if (step instanceof Step.Compute compute) {
      String go = new Judge(state, window(state), at, null).choose(compute.then());
      if (go == null) {
        state.fault = "step " + step.id() + " has no way on";
        return null;
      }
      return new Place(procedure, go);
    }
    if (step instanceof Step.Call call) {
      Procedure called = library.procedure(call.procedure());
      Place begin = new Place(called.id(), called.begin());
      state.places = state.with(state.places, begin);
      return begin;
    }
    if (step instanceof Step.Done && state.places.size() > 1) {
      state.places = List.copyOf(state.places.subList(0, state.places.size() - 1));
      Step.Call caller = (Step.Call) step(state);
      return move(state, caller.go());
    }
    if (step instanceof Step.TurnRod turn) {
      return toReading(state, turn, at);
    }
    return null;
  }

  private static Place move(State state, String step) {
    Place to = new Place(state.place().procedure(), step);
    state.move(to);
    return to;
  }

  /** Where a fresh reading is taken, if this turn needs one first. */
  private @Nullable Place toReading(State state, Step.TurnRod turn, Instant at) {
    Kind kind = kind(state);
    Window window = window(state);
    if (kind == null || window == null) {
      return null;
    }
    if (!(guard.rule(state, turn, kind, window, at) instanceof Guard.Ruling.ReadFirst)) {
      return null;
    }
    // A reading that has only grown old is the person's pace, not the procedure's fault.
    state.putOff += Account.fresh(state) == null ? 1 : 0;
    Procedure procedure = library.procedure(state.place().procedure());
    boolean ready = Account.ready(state, library.limits(), at);
    return new Place(procedure.id(), ready ? procedure.reread() : retune(state));
  }

  /** The present step. */
  Step step(State state) {
    Place place = state.place();
    return library.procedure(place.procedure()).step(place.step());
  }

  @Nullable Kind kind(State state) {
    Kind kind = state.kind == null ? null : library.kinds().get(state.kind);
    Integer joint = state.started.jointFret();
    return kind == null || joint == null ? kind : kind.withJoint(joint);
  }

  @Nullable Window window(State state) {
    Kind kind = kind(state);
    return kind == null || state.style == null ? null : kind.target(state.style).window();
  }

  private <S extends Step> S expect(State state, String id, Class<S> type) {
    Step step = state.places.isEmpty() ? null : step(state);
    if (!type.isInstance(step) || !step.id().equals(id)) {
      String here = step == null ? "the start" : step.id();
      throw new Astray("the log goes on at step " + id + ", but the procedure stands at " + here);
    }
    return type.cast(step);
  }

  private static Set<Fact> without(Set<Fact> facts, Fact fact) {
    return facts.stream().filter(f -> f != fact).collect(Collectors.toSet());
  }
}
