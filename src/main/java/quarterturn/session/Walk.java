package quarterturn.session;

import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import quarterturn.craft.Decision;
import quarterturn.craft.Window;
import quarterturn.procedure.Branch;
import quarterturn.procedure.Condition;
import quarterturn.procedure.Fact;
import quarterturn.procedure.Kind;
import quarterturn.procedure.Library;
import quarterturn.procedure.Limits;
import quarterturn.procedure.Procedure;
import quarterturn.procedure.Step;
import quarterturn.procedure.Verdict;
import quarterturn.procedure.Ways;

/** Moves a state through its procedure, on past the steps that ask nothing. */
final class Walk {
  /** Steps that ask nothing may follow each other so often; more is a loop without an end. */
  private static final int MOST_SILENT = 100;

  private final Library library;
  private final Guard guard;

  Walk(Library library, Guard guard) {
    this.library = library;
    this.guard = guard;
  }

  /** Where the strings are brought to pitch: on a neck that is loose, where it is seated first. */
  String retune(State state) {
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

  void enterWhenReady(State state) {
    if (state.kind != null && state.style != null && state.places.isEmpty()) {
      Procedure procedure = library.procedure(state.started.procedure());
      state.places = List.of(new Place(procedure.id(), procedure.begin()));
      enter(state, state.last);
    }
  }

  /** Enters the procedure at hand, unless it needs what is stale; then that is asked about. */
  private void enter(State state, Instant at) {
    state.entering = !missing(state, at).isEmpty();
    if (!state.entering) {
      arrive(state, at);
    }
  }

  /** What the procedure at hand needs and must not build on. */
  private List<Stage> missing(State state, Instant at) {
    return stages(state, at).missing(library.procedure(state.place().procedure()).needs());
  }

  Limits limits() {
    return library.limits();
  }

  Stages stages(State state, Instant at) {
    return new Stages(state, library, kind(state), at);
  }

  /** "Relief is stale, since ...; Action was not done. The way: relief, then action." */
  String lacking(State state, Instant at) {
    List<String> parts = new ArrayList<>();
    Set<String> way = new LinkedHashSet<>();
    for (Stage stage : missing(state, at)) {
      String because = stage.because() == null ? "" : ", since " + stage.because();
      parts.add(stage.name() + ": " + stage.status().words() + because + ".");
      if (stage.by() != null) {
        way.add(stage.by());
      }
    }
    parts.add("The shortest way to fresh: " + String.join(", then ", way) + ".");
    return String.join("\n", parts);
  }

  /** Goes to what is needed first; afterwards the procedure at hand is entered again. */
  void first(State state, Instant at) {
    for (Stage stage : missing(state, at)) {
      Procedure by = stage.by() == null ? null : library.procedures().get(stage.by());
      if (by != null) {
        state.places = state.with(state.places, new Place(by.id(), by.begin()));
        enter(state, at);
        return;
      }
    }
    state.refused = lacking(state, at);
  }

  /**
   * What a step of the procedure at hand changes of the instrument, or null.
   *
   * @param option what is chosen there, or null
   */
  @Nullable String changes(State state, String id, @Nullable String option) {
    if (state.places.isEmpty()) {
      return null;
    }
    Step step = library.procedure(state.place().procedure()).steps().get(id);
    if (step instanceof Step.Tell tell && state.away == null) {
      return tell.changes();
    }
    if (step instanceof Step.Choose choose && option != null) {
      for (Step.Option one : choose.options()) {
        if (one.id().equals(option)) {
          return one.changes();
        }
      }
    }
    return null;
  }

  /** What is being set on the string at hand, or null where nothing is. */
  Event.@Nullable Adjusted adjusting(State state) {
    Kind kind = kind(state);
    boolean own = state.away != null || state.places.isEmpty();
    if (own || kind == null || state.style == null) {
      return null;
    }
    if (!(step(state) instanceof Step.Adjust adjust)) {
      return null;
    }
    double amount =
        new Figures(state, library, kind, state.style).amount(adjust.adjustment(), state.string);
    String string = kind.strings().get(state.string);
    return new Event.Adjusted(state.last, adjust.id(), adjust.adjustment().word(), string, amount);
  }

  /**
   * The next string from {@code from} on that a step has something to set on, or -1.
   *
   * @param from 0 is the lowest string
   */
  int nextString(State state, Step.Adjust step, int from) {
    Kind kind = kind(state);
    if (kind == null || state.style == null) {
      return -1;
    }
    for (int i = from; i < kind.strings().size(); i++) {
      Verdict verdict =
          Values.verdict(
              state, library.results(), kind, state.style, step.adjustment().quantity(), i);
      if (verdict == Verdict.ABOVE || verdict == Verdict.BELOW) {
        return i;
      }
    }
    return -1;
  }

  void go(State state, Branch.Fork fork, Instant at, Event.@Nullable Read just) {
    String step = branch(state, fork, judge(state, at, just));
    if (step == null) {
      state.fault = "step " + state.place().step() + " has no way on for this answer";
    } else {
      go(state, step, at);
    }
  }

  /** The step that the first branch that holds leads to, or null where none does. */
  private static @Nullable String branch(State state, Branch.Fork fork, Judge judge) {
    int way = judge.choose(fork);
    String go = way < fork.branches().size() ? fork.branches().get(way).go() : fork.otherwise();
    if (go != null) {
      pass(state, way);
    }
    return go;
  }

  /** Takes note of the way out of the present step. */
  private static void pass(State state, int way) {
    state.passages = state.with(state.passages, new Passage(state.place(), way));
  }

  /**
   * Goes on by one of the ways of the present step.
   *
   * @param way its index among them
   */
  void go(State state, int way, Instant at) {
    String step = Ways.of(state.place().procedure(), step(state)).get(way).to();
    pass(state, way);
    go(state, step, at);
  }

  private Judge judge(State state, Instant at, Event.@Nullable Read just) {
    return new Judge(state, library, kind(state), window(state), at, just, () -> fault(state));
  }

  /** Whether a condition holds now. */
  boolean holds(State state, Condition condition, Instant at) {
    return judge(state, at, null).holds(condition);
  }

  private Optional<Decision.Reason> fault(State state) {
    Kind kind = kind(state);
    Window window = window(state);
    return kind == null || window == null
        ? Optional.empty()
        : Optional.ofNullable(guard.fault(state, kind, window));
  }

  void go(State state, String step, Instant at) {
    state.move(new Place(state.place().procedure(), step));
    arrive(state, at);
  }

  /** Enters the present step and walks on through those that ask nothing. */
  void arrive(State state, Instant at) {
    for (int silent = 0; silent < MOST_SILENT; silent++) {
      Place place = state.place();
      String key = Fold.key(place.procedure(), place.step());
      state.reached = state.with(state.reached, key, state.reached.getOrDefault(key, 0) + 1);
      state.path = state.with(state.path, place);
      state.string = 0;
      state.line = 0;
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
      String go = branch(state, compute.then(), judge(state, at, null));
      if (go == null) {
        state.fault = "step " + step.id() + " has no way on";
        return null;
      }
      return new Place(procedure, go);
    }
    if (step instanceof Step.Pause pause) {
      boolean asks = new Pauses(this).lines(state, pause) > 0;
      if (!asks) {
        pass(state, 0);
      }
      return asks ? null : new Place(procedure, pause.go());
    }
    if (step instanceof Step.Call call) {
      Procedure called = library.procedure(call.procedure());
      Place begin = new Place(called.id(), called.begin());
      state.places = state.with(state.places, begin);
      state.entering = !missing(state, at).isEmpty();
      return state.entering ? null : begin;
    }
    if (step instanceof Step.Done done && state.places.size() > 1) {
      return back(state, done, at);
    }
    if (step instanceof Step.Adjust adjust) {
      int string = nextString(state, adjust, 0);
      state.string = Math.max(0, string);
      if (string < 0) {
        String go = branch(state, adjust.then(), judge(state, at, null));
        return go == null ? null : new Place(procedure, go);
      }
      return null;
    }
    if (step instanceof Step.TurnRod turn) {
      return toReading(state, turn, at);
    }
    return null;
  }

  /** Back to the procedure that called this one, or that needed it first. */
  private @Nullable Place back(State state, Step.Done done, Instant at) {
    String ended = state.place().procedure();
    state.places = List.copyOf(state.places.subList(0, state.places.size() - 1));
    if (step(state) instanceof Step.Call caller && caller.procedure().equals(ended)) {
      String key = Fold.key(state.place().procedure(), caller.id());
      state.chosen = state.with(state.chosen, key, done.outcome());
      String go = branch(state, caller.then(), judge(state, at, null));
      if (go == null) {
        state.fault = "step " + caller.id() + " has no way on after " + done.outcome();
        return null;
      }
      return move(state, go);
    }
    state.entering = !missing(state, at).isEmpty();
    return state.entering ? null : state.place();
  }

  private static Place move(State state, String step) {
    Place to = new Place(state.place().procedure(), step);
    state.move(to);
    return to;
  }

  /** Where a fresh reading is taken, if this turn needs one first. */
  @Nullable Place toReading(State state, Step.TurnRod turn, Instant at) {
    Kind kind = kind(state);
    Window window = window(state);
    if (kind == null || window == null) {
      return null;
    }
    if (!(guard.rule(state, turn, kind, window, at) instanceof Guard.Ruling.ReadFirst)) {
      return null;
    }
    // Where the neck stands is not known any more, so whether to take a turn back is asked anew.
    state.undoAsked = false;
    // A reading that has only grown old is the person's pace, not the procedure's fault.
    state.putOff += Account.fresh(state) == null ? 1 : 0;
    Procedure procedure = library.procedure(state.place().procedure());
    boolean ready = Account.ready(state, library.limits(), at);
    return new Place(procedure.id(), ready ? procedure.reread() : retune(state));
  }

  /** Another step of the procedure at hand, or null. */
  @Nullable Step step(State state, String id) {
    return library.procedure(state.place().procedure()).steps().get(id);
  }

  /** The present step. */
  Step step(State state) {
    Place place = state.place();
    return library.procedure(place.procedure()).step(place.step());
  }

  @Nullable Kind kind(State state) {
    Kind kind = state.kind == null ? null : library.kinds().get(state.kind);
    Integer joint = state.started.jointFret();
    Event.Own own = state.started.own();
    Kind made = kind == null || own == null ? kind : OwnMake.of(kind, own);
    return made == null || joint == null ? made : made.withJoint(joint);
  }

  @Nullable Window window(State state) {
    Kind kind = kind(state);
    return kind == null || state.style == null ? null : kind.target(state.style).window();
  }
}
