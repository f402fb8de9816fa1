package quarterturn.session;

import java.time.Duration;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import quarterturn.craft.Window;
import quarterturn.procedure.Fact;
import quarterturn.procedure.Feel;
import quarterturn.procedure.Kind;
import quarterturn.procedure.Library;
import quarterturn.procedure.Procedure;
import quarterturn.procedure.Quantity;
import quarterturn.procedure.Results;
import quarterturn.procedure.Step;
import quarterturn.procedure.Style;
import quarterturn.procedure.Ways;
import quarterturn.procedure.Which;
import quarterturn.unit.Turn;

/** Takes one event into a state. Pure: the same events always add up to the same state. */
final class Fold {
  private final Library library;
  private final Guard guard;
  private final Walk walk;
  private final Return comeback;

  Fold(Library library, Guard guard, Walk walk) {
    this.library = library;
    this.guard = guard;
    this.walk = walk;
    this.comeback = new Return(library, walk);
  }

  /** A step of a procedure as a key. */
  static String key(String procedure, String step) {
    return procedure + "/" + step;
  }

  State start(Event.Started started) {
    State state = new State(started);
    state.log = List.of(started);
    walk.enterWhenReady(state);
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
      readFirst(state, event.at());
    } else if (event instanceof Event.Told told) {
      told(state, told, before);
    } else if (event instanceof Event.Chose chose) {
      state.beforeAnswer = before;
      chose(state, chose);
    } else if (event instanceof Event.Read read) {
      state.beforeAnswer = before;
      read(state, read);
    } else if (event instanceof Event.Noted noted) {
      state.beforeAnswer = before;
      noted(state, noted);
    } else if (event instanceof Event.Adjusted adjusted) {
      state.beforeAnswer = before;
      adjusted(state, adjusted);
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
    } else if (event instanceof Event.Passed passed) {
      passed(state, passed);
    } else if (event instanceof Event.ReadBack back) {
      state.beforeAnswer = before;
      readBack(state, back);
    } else if (event instanceof Event.Doubted) {
      state.stepwise = state.place().procedure();
    } else if (event instanceof Event.Resumed resumed) {
      comeback.resumed(state, before, resumed);
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

  /** Before a turn the reading may have grown old, while its hazards or the turn were read. */
  private void readFirst(State state, Instant at) {
    if (state.open == null && walk.step(state) instanceof Step.TurnRod turn) {
      Place to = walk.toReading(state, turn, at);
      if (to != null) {
        walk.go(state, to.step(), at);
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
    change(state, told.changes(), told.at());
    state.establish(without(step.establishes(), Fact.SETTLED), told.at());
    walk.go(state, step.then(), told.at(), null);
  }

  private void chose(State state, Event.Chose chose) {
    if (chose.step().equals(Own.KIND)) {
      state.kind = chose.option();
      walk.enterWhenReady(state);
      return;
    }
    if (chose.step().equals(Own.STYLE)) {
      for (Style style : Style.values()) {
        state.style = style.word().equals(chose.option()) ? style : state.style;
      }
      walk.enterWhenReady(state);
      return;
    }
    if (chose.step().equals(Own.NEEDS)) {
      needs(state, chose);
      return;
    }
    Step.Choose step = expect(state, chose.step(), Step.Choose.class);
    state.chosen =
        state.with(state.chosen, key(state.place().procedure(), step.id()), chose.option());
    for (int way = 0; way < step.options().size(); way++) {
      Step.Option option = step.options().get(way);
      if (option.id().equals(chose.option())) {
        change(state, chose.changes(), chose.at());
        if (step.gives() != null) {
          state.given = state.with(state.given, step.gives(), state.changes.size());
        }
        state.establish(without(option.establishes(), Fact.SETTLED), chose.at());
        walk.go(state, way, chose.at());
        return;
      }
    }
    throw new Astray("step " + step.id() + " has no answer " + chose.option());
  }

  private void read(State state, Event.Read read) {
    Step.Measure step = expect(state, read.step(), Step.Measure.class);
    if (!read.missing()) {
      Reading reading =
          new Reading(read, counts(state, read), state.turns.size(), state.changes.size(), false);
      state.readings = state.with(state.readings, reading);
    }
    Kind kind = walk.kind(state);
    boolean more =
        step.which() == Which.EACH && kind != null && state.string + 1 < kind.strings().size();
    if (more) {
      state.string++;
    } else {
      walk.go(state, step.then(), read.at(), read);
    }
  }

  /** Readings on a string count at pitch only, and relief only once the neck has settled. */
  private boolean counts(State state, Event.Read read) {
    if (read.quantity() == Quantity.RELIEF) {
      return Account.ready(state, library.limits(), read.at());
    }
    return !read.quantity().onString() || state.facts.contains(Fact.AT_PITCH);
  }

  private void noted(State state, Event.Noted noted) {
    Step.Note step = expect(state, noted.step(), Step.Note.class);
    state.chosen =
        state.with(state.chosen, key(state.place().procedure(), step.id()), noted.text());
    walk.go(state, 0, noted.at());
  }

  private void adjusted(State state, Event.Adjusted adjusted) {
    Step.Adjust step = expect(state, adjusted.step(), Step.Adjust.class);
    int next = walk.nextString(state, step, state.string + 1);
    if (next >= 0) {
      state.string = next;
      return;
    }
    change(state, step.adjustment().word(), adjusted.at());
    walk.go(state, step.then(), adjusted.at(), null);
  }

  /** What a change spoils goes stale; strings that it puts out of tune are no more at pitch. */
  private void change(State state, @Nullable String id, Instant at) {
    if (id == null) {
      return;
    }
    state.changes = state.with(state.changes, new Changed(at, id));
    Results.Change change = library.results().changes().get(id);
    for (Quantity quantity : Quantity.values()) {
      boolean spoils =
          change != null
              && library.results().of(quantity).stream()
                  .anyMatch(result -> change.spoils().contains(result.id()));
      if (spoils && quantity == Quantity.RELIEF) {
        state.spoil(quantity);
      }
    }
    if (change != null && change.spoils().contains("pitch")) {
      state.withdraw(Fact.AT_PITCH, Fact.SETTLED);
    }
  }

  /** The way to what a procedure needs, or the end. */
  private void needs(State state, Event.Chose chose) {
    if (chose.option().equals(Own.TAKE_THE_WAY)) {
      walk.first(state, chose.at());
      return;
    }
    state.refused = walk.lacking(state, chose.at());
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
          walk.go(state, step.id(), at);
          return;
        }
      }
    }
    readFirst(state, at);
  }

  private void turned(State state, Event.Turned turned) {
    Step.TurnRod step = expect(state, turned.step(), Step.TurnRod.class);
    made(state, turned.at(), turned.turn(), turned.feel(), true);
    walk.go(state, onFeel(step, turned.feel()), turned.at());
  }

  private void made(State state, Instant at, Turn turn, Feel feel, boolean sure) {
    Turn asked = state.open == null ? turn : state.open.turn();
    Kind kind = walk.kind(state);
    Window window = walk.window(state);
    Prompt.Expected expected =
        kind == null || window == null ? null : guard.expected(state, kind, window, turn);
    state.turns = state.with(state.turns, new TurnMade(at, turn, asked, feel, sure, expected));
    state.open = null;
    state.undoAsked = false;
    state.putOff = 0;
    if (turn.turns() != 0) {
      state.changes = state.with(state.changes, new Changed(at, Results.ROD));
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
      walk.go(state, walk.retune(state), recalled.at());
    } else {
      Feel felt = feel == null ? Feel.SMOOTH : feel;
      made(state, recalled.at(), recalled.turned(), felt, recalled.sure());
      walk.go(state, onFeel(step, felt), recalled.at());
    }
  }

  private void waited(State state, Event.Waited waited) {
    state.waiting = null;
    Step step = walk.step(state);
    if (step instanceof Step.TurnRod) {
      // The daily rest the limits put before a turn: afterwards the neck is read anew.
      lift(state, waited);
      state.spoil();
      walk.arrive(state, waited.at());
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
    walk.go(state, 0, waited.at());
  }

  private void passed(State state, Event.Passed passed) {
    if (walk.step(state) instanceof Step.Tell tell && tell.id().equals(passed.step())) {
      walk.go(state, tell.then(), passed.at(), null);
      return;
    }
    Step.Wait wait = expect(state, passed.step(), Step.Wait.class);
    state.establish(wait.establishes(), passed.at());
    walk.go(state, 0, passed.at());
  }

  private void readBack(State state, Event.ReadBack back) {
    Step.Pause pause = expect(state, back.step(), Step.Pause.class);
    state.line++;
    if (state.line >= new Pauses(walk).lines(state, pause)) {
      walk.go(state, 0, back.at());
    }
  }

  private static void lift(State state, Event.Waited waited) {
    if (waited.reason() != null) {
      state.lifted = new State.Lifted(waited.at(), state.turns.size());
    }
  }

  private Duration settle() {
    return Duration.ofMinutes(library.limits().settleMinutes());
  }

  /** Which of the step's ways a feel leads on by. */
  private static int onFeel(Step.TurnRod step, Feel felt) {
    if (!step.felt().containsKey(felt)) {
      throw new Astray("step " + step.id() + " says nothing about " + felt.word());
    }
    return (int)
        Arrays.stream(Feel.values())
            .filter(feel -> feel.compareTo(felt) < 0 && step.felt().containsKey(feel))
            .count();
  }

  private <S extends Step> S expect(State state, String id, Class<S> type) {
    Step step = state.places.isEmpty() ? null : walk.step(state);
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
