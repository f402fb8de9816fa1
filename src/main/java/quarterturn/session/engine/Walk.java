package quarterturn.session.engine;

import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import quarterturn.craft.Window;
import quarterturn.craft.rod.Decision;
import quarterturn.procedure.Branch;
import quarterturn.procedure.Library;
import quarterturn.procedure.Limits;
import quarterturn.procedure.Procedure;
import quarterturn.procedure.Recorded;
import quarterturn.procedure.Shortcut;
import quarterturn.procedure.Step;
import quarterturn.procedure.bench.Detours;
import quarterturn.procedure.condition.Condition;
import quarterturn.procedure.condition.Verdict;
import quarterturn.procedure.kind.BridgeKind;
import quarterturn.procedure.kind.Kind;
import quarterturn.procedure.kind.Quantity;
import quarterturn.procedure.kind.Which;
import quarterturn.session.Event;
import quarterturn.session.OwnMake;
import quarterturn.session.Place;
import quarterturn.session.Prompt;
import quarterturn.session.Stage;
import quarterturn.unit.Turn;

/** Moves a state through its procedure, past the steps that ask nothing. */
record Walk(Library library, Guard guard) {
  /** Most steps in a row that ask nothing; more must be an endless loop. */
  private static final int MOST_SILENT = 100;

  /**
   * Id of the step that brings the strings to pitch; for a loose neck, of the step that seats it
   * first.
   */
  String retune(State state) {
    return new Detours(procedure(state)).retune(state.bench());
  }

  private Procedure procedure(State state) {
    return library.procedure(state.place().procedure());
  }

  /** Enters the procedure once the kind is known, and a style that it has windows for. */
  State enterWhenReady(State before) {
    Kind kind = kind(before);
    State state = kind == null ? before : before.with(before.kind(), kind.styled(before.style()));
    if (state.kind() == null || state.style() == null || !state.position().nowhere()) {
      return state;
    }
    Procedure procedure = library.procedure(state.started().procedure());
    return enter(into(state, procedure), state.last());
  }

  private static State into(State state, Procedure procedure) {
    Place begin = new Place(procedure.id(), procedure.begin());
    return state.with(state.position().into(begin));
  }

  /** Enters the present procedure, unless it needs a stale result, which is asked about first. */
  private State enter(State state, Instant at) {
    State now = entering(state, at);
    return now.position().entering() ? now : arrive(now, at);
  }

  private State entering(State state, Instant at) {
    return state.with(state.position().entering(!missing(state, at).isEmpty()));
  }

  /** The results that the present procedure needs and must not use as they are. */
  private List<Stage> missing(State state, Instant at) {
    return stages(state, at).missing(procedure(state).needs());
  }

  Limits limits() {
    return library.limits();
  }

  Stages stages(State state, Instant at) {
    return new Stages(state, library, kind(state), at);
  }

  /** The missing results with their state, a line each, and the shortest way to make them fresh. */
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

  /**
   * Goes to the procedure of the first missing result; the present procedure is entered again after
   * it.
   */
  State first(State state, Instant at) {
    for (Stage stage : missing(state, at)) {
      Procedure by = stage.by() == null ? null : library.procedures().get(stage.by());
      if (by != null) {
        return enter(into(state, by), at);
      }
    }
    return state.with(state.pending().refused(lacking(state, at)));
  }

  /**
   * Id of the change that a step of the present procedure makes to the instrument, or null.
   *
   * @param option id of the option chosen there, or null
   */
  @Nullable String changes(State state, String id, @Nullable String option) {
    if (state.position().nowhere()) {
      return null;
    }
    Step step = procedure(state).steps().get(id);
    if (step instanceof Step.Tell tell && state.pending().away() == null) {
      return tell.changes();
    }
    return step instanceof Step.Choose choose
        ? choose.options().stream()
            .filter(one -> one.id().equals(option))
            .findFirst()
            .map(Step.Option::changes)
            .orElse(null)
        : null;
  }

  /** The saddle or pickup setting on the present string, or null where none is under way. */
  Event.@Nullable Adjusted adjusting(State state) {
    Kind kind = kind(state);
    boolean own = state.pending().away() != null || state.position().nowhere();
    if (own || kind == null || state.style() == null) {
      return null;
    }
    if (!(step(state) instanceof Step.Adjust adjust)) {
      return null;
    }
    double amount =
        new Figures(state, library, kind, state.style())
            .amount(adjust.adjustment(), state.position().string());
    String string = kind.strings().get(state.position().string());
    return new Event.Adjusted(
        state.last(), adjust.id(), adjust.adjustment().word(), string, amount);
  }

  /**
   * Index of the next string, at or after {@code from}, on which a step sets something, or -1.
   *
   * @param from index of a string, 0 for the lowest
   */
  int nextString(State state, Step.Adjust step, int from) {
    Kind kind = kind(state);
    if (kind == null || state.style() == null) {
      return -1;
    }
    for (int i = from; i < kind.strings().size(); i++) {
      Verdict verdict =
          Values.verdict(
              state, library.results(), kind, state.style(), step.adjustment().quantity(), i);
      if (verdict == Verdict.ABOVE || verdict == Verdict.BELOW) {
        return i;
      }
    }
    return -1;
  }

  /** The notes of the strings that a step sets, where that concerns no other string; else none. */
  List<String> strings(State state, Step.Adjust step) {
    Kind kind = kind(state);
    String bridge = ShortPath.made(state, library, Recorded.BRIDGE);
    if (kind == null || !step.adjustment().alone() || BridgeKind.PAIRED.word().equals(bridge)) {
      return List.of();
    }
    List<String> set = new ArrayList<>();
    for (int at = nextString(state, step, 0); at >= 0; at = nextString(state, step, at + 1)) {
      set.add(kind.strings().get(at));
    }
    return set;
  }

  /**
   * Index of the next string, at or after {@code from}, on which a step that reads each reads, or
   * -1. One whose reading a change to other strings has left as it was is passed over; where a step
   * reads once, so is one that was read in this session and still holds.
   */
  int nextRead(State state, Step.Measure step, int from, Instant at) {
    Kind kind = kind(state);
    if (kind == null || step.which() != Which.EACH) {
      return -1;
    }
    List<String> strings = kind.strings();
    for (int i = from; i < strings.size(); i++) {
      String string = strings.get(i);
      boolean kept =
          Values.kept(state, library.results(), step.quantity(), string)
              || (Shortcut.once(step)
                  && Values.holds(state, library.results(), step.quantity(), string, at));
      if (!kept) {
        return i;
      }
    }
    return -1;
  }

  /**
   * Moves on by the first branch that holds.
   *
   * @param just the reading just taken, or null
   */
  State go(State state, Branch.Fork fork, Instant at, Event.@Nullable Read just) {
    int way = judge(state, at, just).choose(fork);
    String to = fork.way(way);
    return to == null
        ? faulty(state, " has no way on for this answer")
        : go(passed(state, way), to, at);
  }

  private static State faulty(State state, String what) {
    String step = "step " + state.place().step();
    return state.with(state.pending().fault(step + what));
  }

  /** Records the way taken out of the present step. */
  private static State passed(State state, int way) {
    return state.with(state.position().passed(way));
  }

  /**
   * Moves on by one of the ways out of the present step.
   *
   * @param way the way's index
   */
  State go(State state, int way, Instant at) {
    return go(passed(state, way), step(state).exits().get(way).to(), at);
  }

  private Judge judge(State state, Instant at, Event.@Nullable Read just) {
    return new Judge(state, library, kind(state), window(state), at, just, () -> fault(state));
  }

  /** Whether a condition holds at present. */
  boolean holds(State state, Condition condition, Instant at) {
    return judge(state, at, null).holds(condition);
  }

  /** The ruling on a turn step, or null where the kind is unknown. */
  Guard.@Nullable Ruling rule(State state, Step.TurnRod turn, Instant at) {
    Kind kind = kind(state);
    Window window = window(state);
    return kind == null || window == null ? null : guard.rule(state, turn, kind, window, at);
  }

  /** The relief to expect after a turn, or null where none can be expected. */
  Prompt.@Nullable Expected expected(State state, Turn turn) {
    Kind kind = kind(state);
    Window window = window(state);
    return kind == null || window == null ? null : guard.expected(state, kind, window, turn);
  }

  /** Whether the last reading asks for a turn of the rod. */
  boolean asksForTurn(State state, Instant now) {
    Kind kind = kind(state);
    Window window = window(state);
    return kind != null && window != null && guard.asksForTurn(state, kind, window, now);
  }

  /** What the next turn should change, in words without the last stop. */
  String nextTurn(State state, Instant now) {
    Kind kind = kind(state);
    Window window = window(state);
    Outlook next = kind == null || window == null ? null : guard.outlook(state, kind, window, now);
    return next == null
        ? "What a turn would change cannot be said without a fresh reading"
        : next.words();
  }

  private Optional<Decision.Reason> fault(State state) {
    Kind kind = kind(state);
    Window window = window(state);
    return kind == null || window == null
        ? Optional.empty()
        : Optional.ofNullable(guard.fault(state, kind, window));
  }

  State go(State state, String step, Instant at) {
    return arrive(state.with(state.position().at(step)), at);
  }

  /**
   * The state that a walk has come to.
   *
   * @param on whether its present step is another one, yet to be entered
   */
  record Arrived(State state, boolean on) {}

  /** Enters the present step and walks on past those that ask nothing. */
  State arrive(State state, Instant at) {
    Arrived now = new Arrived(state, true);
    for (int silent = 0; silent < MOST_SILENT && now.on(); silent++) {
      State entered = now.state().with(now.state().position().entered());
      now = onward(entered, at);
    }
    return now.on() ? faulty(now.state(), " stands in a loop without an end") : now.state();
  }

  /** Moves on from a step that asks nothing; a step that asks something stays the present one. */
  private Arrived onward(State state, Instant at) {
    Arrived here = new Arrived(state, false);
    return step(state)
        .match(
            new Step.Cases<>(
                tell -> here,
                choose -> here,
                note -> here,
                pause ->
                    new Pauses(this).lines(state, pause) > 0
                        ? here
                        : to(passed(state, 0), pause.go()),
                adjust -> adjust(state, adjust, at),
                measure -> {
                  int first = nextRead(state, measure, 0, at);
                  return first > 0
                      ? new Arrived(state.with(state.position().string(first)), false)
                      : here;
                },
                compute -> branch(state, compute.then(), at, " has no way on"),
                turn -> toReading(state, turn, at),
                wait -> here,
                call -> entered(into(state, library.procedure(call.procedure())), at),
                done -> state.position().places().size() > 1 ? back(state, done, at) : here,
                handOver -> here));
  }

  private static Arrived to(State state, String step) {
    return new Arrived(state.with(state.position().at(step)), true);
  }

  /** Enters a procedure, unless a missing result has to be asked about first. */
  private Arrived entered(State state, Instant at) {
    State now = entering(state, at);
    return new Arrived(now, !now.position().entering());
  }

  private Arrived branch(State state, Branch.Fork fork, Instant at, String lacking) {
    int way = judge(state, at, null).choose(fork);
    String to = fork.way(way);
    return to == null ? new Arrived(faulty(state, lacking), false) : to(passed(state, way), to);
  }

  private Arrived adjust(State state, Step.Adjust adjust, Instant at) {
    int string = nextString(state, adjust, 0);
    return string < 0
        ? branch(state, adjust.then(), at, " has no way on")
        : new Arrived(state.with(state.position().string(string)), false);
  }

  /** Returns to the procedure that called this one or needed it first. */
  private Arrived back(State state, Step.Done done, Instant at) {
    String ended = state.place().procedure();
    State out = state.with(state.position().out());
    if (step(out) instanceof Step.Call caller && caller.procedure().equals(ended)) {
      State now = out.with(out.position().chose(caller.id(), done.outcome()));
      Arrived back = branch(now, caller.then(), at, " has no way on after " + done.outcome());
      return back.on() ? to(back.state(), afterCall(back.state())) : back;
    }
    return entered(out, at);
  }

  private String afterCall(State back) {
    return new Detours(procedure(back)).afterCall(back.place().step(), back.bench());
  }

  /** Moves to the step that takes a fresh reading, if the turn needs one first. */
  Arrived toReading(State state, Step.TurnRod turn, Instant at) {
    if (!(rule(state, turn, at) instanceof Guard.Ruling.ReadFirst)) {
      return new Arrived(state, false);
    }
    // Where the neck stands is not known any more, so whether to take a turn back is asked anew.
    Pending pending = state.pending().undoForgotten();
    boolean ready = state.bench().counts(Quantity.RELIEF, state.history().timely(at));
    String to = ready ? procedure(state).reread() : retune(state);
    return to(state.with(Guard.slow(state) ? pending : pending.putOffOnceMore()), to);
  }

  /** A step of the present procedure, or null where it has none with that id. */
  @Nullable Step step(State state, String id) {
    return library.procedure(state.place().procedure()).steps().get(id);
  }

  /** The present step. */
  Step step(State state) {
    Place place = state.place();
    return library.procedure(place.procedure()).step(place.step());
  }

  @Nullable Kind kind(State state) {
    Kind kind = state.kind() == null ? null : library.kinds().get(state.kind());
    Integer joint = state.started().jointFret();
    Event.Own own = state.started().own();
    Kind made = kind == null || own == null ? kind : OwnMake.of(kind, own);
    return made == null || joint == null ? made : made.withJoint(joint);
  }

  @Nullable Window window(State state) {
    Kind kind = kind(state);
    return kind == null || state.style() == null ? null : kind.target(state.style()).window();
  }
}
