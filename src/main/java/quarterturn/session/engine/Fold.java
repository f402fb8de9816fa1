package quarterturn.session.engine;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Fact;
import quarterturn.procedure.Library;
import quarterturn.procedure.Procedure;
import quarterturn.procedure.Step;
import quarterturn.procedure.bench.BenchState;
import quarterturn.procedure.bench.Detours;
import quarterturn.procedure.bench.Freshness;
import quarterturn.procedure.condition.Feel;
import quarterturn.procedure.kind.Quantity;
import quarterturn.procedure.kind.Style;
import quarterturn.session.Changed;
import quarterturn.session.Event;
import quarterturn.session.Lists;
import quarterturn.session.PastAnswers;
import quarterturn.session.RecordMismatchException;
import quarterturn.unit.Turn;

/** Adds one event to a state. Pure: the same events always give the same state. */
final class Fold {
  private final Library library;
  private final Walk walk;
  private final Return comeback;

  Fold(Library library, Walk walk) {
    this.library = library;
    this.walk = walk;
    this.comeback = new Return(library, walk);
  }

  State start(Event.Started started) {
    return walk.enterWhenReady(State.of(started, library.limits()));
  }

  /**
   * The state after {@code event}.
   *
   * @throws RecordMismatchException when the event does not fit the state, such as after a change
   *     of the procedure
   */
  State apply(State before, Event event) {
    State state = before.and(event);
    return event.match(
        new Event.Cases<>(
            started -> {
              throw new RecordMismatchException("the log begins a second time");
            },
            accepted ->
                readFirst(
                    state.accepting(Lists.union(state.accepted(), accepted.hazards())), event.at()),
            told -> told(state, told, before),
            noted -> noted(state.backTo(before), noted),
            adjusted -> adjusted(state.backTo(before), adjusted),
            chose -> chose(state.backTo(before), chose),
            read -> read(state.backTo(before), read),
            offered -> state.with(state.pending().offered(offered)),
            undoAsked -> undoAsked(state, event.at()),
            turned -> turned(state.backTo(reported(before)), turned),
            recalled -> recalled(state.backTo(reported(before)), recalled),
            began -> state.with(state.pending().waiting(began)),
            waited -> waited(state.backTo(before), waited),
            passed -> passed(state, passed),
            back -> readBack(state.backTo(before), back),
            doubted -> state.with(state.position().inSteps()),
            corrected -> correct(before, corrected),
            left -> state,
            resumed -> comeback.resumed(state.backTo(null), before, resumed),
            ended -> state.backTo(null).with(state.pending().ended(ended)),
            discarded -> state));
  }

  /**
   * The state after a reported turn was withdrawn: whether the turn was made is asked again, and
   * not the turn itself, which must not be shown twice.
   */
  private static State reported(State before) {
    return before.backTo(null).with(before.pending().recalling(true));
  }

  private static State correct(State before, Event event) {
    List<Event> log = Lists.with(before.log(), event);
    State answered = before.before();
    if (before.correctable() && before.pending().open() != null) {
      // The rod may have been turned already: asked for again, it would be turned twice.
      return reported(before).logging(log);
    }
    if (!before.correctable() || answered == null) {
      throw new RecordMismatchException("there is no answer to take back");
    }
    // A hazard once shown stays shown.
    return answered.logging(log).accepting(before.accepted());
  }

  /**
   * Goes to a reading if one has grown too old for the turn while the turn or its hazards were
   * read.
   */
  private State readFirst(State state, Instant at) {
    return state.pending().open() == null && walk.step(state) instanceof Step.TurnRod turn
        ? walk.toReading(state, turn, at).state()
        : state;
  }

  /**
   * Applies a rule to the bench; where the rule would make a fresh relief stale, every reading so
   * far is spoiled.
   */
  private static State bench(State state, UnaryOperator<BenchState> rule) {
    BenchState fresh = state.bench().with(Quantity.RELIEF, Freshness.FRESH);
    boolean spoils = rule.apply(fresh).held(Quantity.RELIEF) != Freshness.FRESH;
    State now = state.with(rule.apply(state.bench()));
    return spoils ? now.with(now.history().allSpoiled()) : now;
  }

  /** Records that the strings were brought to pitch, if the step does so. */
  private static State tuned(State state, Step step, Instant at) {
    return tuned(state, step.establishes().contains(Fact.AT_PITCH), at);
  }

  private static State tuned(State state, boolean tunes, Instant at) {
    return tunes && state.bench().has(Fact.AT_PITCH)
        ? state.with(state.history().tuned(at))
        : state;
  }

  private State told(State state, Event.Told told, State before) {
    if (state.pending().away() != null && told.step().equals(EngineQuestions.RESUME)) {
      return state.with(state.pending().away(null));
    }
    Step.Tell step = expect(state, told.step(), Step.Tell.class);
    State changed = changed(state.backTo(before), told.changes(), told.at());
    State done =
        bench(changed, bench -> bench.done(library.results(), told.changes(), step.establishes()));
    return walk.go(tuned(done, step, told.at()), step.then(), told.at(), null);
  }

  private static State changed(State state, @Nullable String change, Instant at) {
    return state.with(state.history().changed(at, change));
  }

  private State chose(State state, Event.Chose chose) {
    return switch (chose.step()) {
      case EngineQuestions.KIND -> walk.enterWhenReady(state.with(chose.option(), state.style()));
      case EngineQuestions.STYLE ->
          walk.enterWhenReady(state.with(state.kind(), style(state, chose)));
      case EngineQuestions.NEEDS ->
          chose.option().equals(EngineQuestions.TAKE_THE_WAY)
              ? walk.first(state, chose.at())
              : state.with(state.pending().refused(walk.lacking(state, chose.at())));
      case EngineQuestions.AS_RECORDED, EngineQuestions.ENDS ->
          state.with(state.position().said(chose.step(), chose.option()));
      case EngineQuestions.SINCE ->
          state.with(state.position().chose(chose.step(), chose.option()));
      default ->
          PastAnswers.differing(chose.step()) == null
              ? chosen(state, chose)
              : state.with(state.position().said(chose.step(), chose.option()));
    };
  }

  private static @Nullable Style style(State state, Event.Chose chose) {
    for (Style style : Style.values()) {
      if (style.word().equals(chose.option())) {
        return style;
      }
    }
    return state.style();
  }

  private State chosen(State state, Event.Chose chose) {
    Step.Choose step = expect(state, chose.step(), Step.Choose.class);
    for (int way = 0; way < step.options().size(); way++) {
      Step.Option option = step.options().get(way);
      if (option.id().equals(chose.option())) {
        State now = state.with(state.position().chose(step.id(), option.id()));
        now = changed(now, chose.changes(), chose.at());
        now = step.gives() == null ? now : now.with(now.history().gave(step.gives()));
        now =
            bench(
                now, bench -> bench.done(library.results(), chose.changes(), option.establishes()));
        now = tuned(now, option.establishes().contains(Fact.AT_PITCH), chose.at());
        return walk.go(now, way, chose.at());
      }
    }
    throw new RecordMismatchException("step " + step.id() + " has no answer " + chose.option());
  }

  private State read(State state, Event.Read read) {
    Step.Measure step = expect(state, read.step(), Step.Measure.class);
    BenchState bench = state.bench();
    boolean timely = state.history().timely(read.at());
    State now =
        read.missing()
            ? state.with(bench.missed(read.quantity(), step.which()))
            : state
                .with(state.history().read(read, bench.counts(read.quantity(), timely)))
                .with(bench.read(read.quantity(), step.which(), timely));
    int next = walk.nextRead(now, step, now.position().string() + 1, read.at());
    return next >= 0
        ? now.with(now.position().string(next))
        : walk.go(now, step.then(), read.at(), read);
  }

  private State noted(State state, Event.Noted noted) {
    Step.Note step = expect(state, noted.step(), Step.Note.class);
    return walk.go(state.with(state.position().chose(step.id(), noted.text())), 0, noted.at());
  }

  private State adjusted(State state, Event.Adjusted adjusted) {
    Step.Adjust step = expect(state, adjusted.step(), Step.Adjust.class);
    int next = walk.nextString(state, step, state.position().string() + 1);
    if (next >= 0) {
      return state.with(state.position().string(next));
    }
    Changed set = new Changed(adjusted.at(), step.changes(), walk.strings(state, step));
    State now = state.with(state.history().changed(set));
    now = bench(now, bench -> bench.adjusted(library.results(), step.adjustment()));
    return walk.go(now, step.then(), adjusted.at(), null);
  }

  /**
   * Begins taking back a turn; where that turn loosened, taking it back tightens, so the strings
   * are slackened first.
   */
  private State undoAsked(State state, Instant at) {
    State now = state.with(state.pending().undo());
    TurnMade last = state.history().lastMoved();
    boolean tightens = last != null && last.turn().turns() < 0;
    String slacken =
        tightens && !state.bench().has(Fact.DETUNED)
            ? new Detours(procedure(state)).undoing()
            : null;
    return slacken == null ? readFirst(now, at) : walk.go(now, slacken, at);
  }

  private Procedure procedure(State state) {
    return library.procedure(state.place().procedure());
  }

  private State turned(State state, Event.Turned turned) {
    Step.TurnRod step = expect(state, turned.step(), Step.TurnRod.class);
    State made = made(state, turned.at(), turned.turn(), turned.feel(), true);
    return walk.go(made, onFeel(step, turned.feel()), turned.at());
  }

  private State made(State state, Instant at, Turn turn, Feel feel, boolean sure) {
    Event.Offered open = state.pending().open();
    boolean moved = turn.turns() != 0;
    TurnMade made =
        new TurnMade(
            at,
            turn,
            open == null ? turn : open.turn(),
            feel,
            sure,
            walk.expected(state, turn),
            open == null ? null : open.freed());
    State now = state.with(state.history().turned(made)).with(state.pending().turnOver(0));
    now = changed(now, moved ? walk.step(now).changes() : null, at);
    return now.with(now.bench().turned(library.results(), moved));
  }

  private State recalled(State state, Event.Recalled recalled) {
    Step.TurnRod step = expect(state, recalled.step(), Step.TurnRod.class);
    Feel feel = recalled.feel();
    if (recalled.turned().turns() == 0 && feel == null) {
      State now = state.with(state.pending().turnOver(state.pending().putOff()));
      return walk.go(now, walk.retune(now), recalled.at());
    }
    Feel felt = feel == null ? Feel.SMOOTH : feel;
    State made = made(state, recalled.at(), recalled.turned(), felt, recalled.sure());
    return walk.go(made, onFeel(step, felt), recalled.at());
  }

  private State waited(State state, Event.Waited waited) {
    State over = state.with(state.pending().waiting(null));
    if (walk.step(state) instanceof Step.TurnRod) {
      // The daily rest the limits put before a turn: afterwards the neck is read anew.
      return walk.arrive(bench(lifted(over, waited), BenchState::spoiled), waited.at());
    }
    Step.Wait wait = expect(state, waited.step(), Step.Wait.class);
    Instant tuned = state.history().tuned();
    boolean settled =
        waited.reason() != null || (tuned != null && !waited.at().isBefore(tuned.plus(settle())));
    State now = wait.rest() ? lifted(over, waited) : over;
    now = tuned(bench(now, bench -> bench.waited(wait, settled)), wait, waited.at());
    return walk.go(now, 0, waited.at());
  }

  private State passed(State state, Event.Passed passed) {
    if (walk.step(state) instanceof Step.Tell tell && tell.id().equals(passed.step())) {
      return walk.go(state, tell.then(), passed.at(), null);
    }
    if (walk.step(state) instanceof Step.Measure read && read.id().equals(passed.step())) {
      return walk.go(state, read.then(), passed.at(), null);
    }
    if (walk.step(state) instanceof Step.Note note && note.id().equals(passed.step())) {
      String noted = String.valueOf(new ShortPath(walk).noted(state, note));
      return walk.go(state.with(state.position().chose(note.id(), noted)), 0, passed.at());
    }
    if (walk.step(state) instanceof Step.Choose choose && choose.id().equals(passed.step())) {
      String known = new ShortPath(walk).known(state, choose);
      return chosen(state, new Event.Chose(passed.at(), choose.id(), String.valueOf(known), null));
    }
    Step.Wait wait = expect(state, passed.step(), Step.Wait.class);
    State now = bench(state, bench -> bench.waited(wait, true));
    return walk.go(tuned(now, wait, passed.at()), 0, passed.at());
  }

  private State readBack(State state, Event.ReadBack back) {
    Step.Pause pause = expect(state, back.step(), Step.Pause.class);
    State now = state.with(state.position().nextLine());
    boolean over = now.position().line() >= new Pauses(walk).lines(now, pause);
    return over ? walk.go(now, 0, back.at()) : now;
  }

  private static State lifted(State state, Event.Waited waited) {
    return waited.reason() == null ? state : state.with(state.history().lifted(waited.at()));
  }

  private Duration settle() {
    return Duration.ofMinutes(library.limits().settleMinutes());
  }

  /** Index of the way that a feel takes out of a rod turn. */
  private static int onFeel(Step.TurnRod step, Feel felt) {
    List<String> words = step.exits().stream().map(Step.Exit::word).toList();
    if (!words.contains(felt.word())) {
      throw new RecordMismatchException("step " + step.id() + " says nothing about " + felt.word());
    }
    return words.indexOf(felt.word());
  }

  private <S extends Step> S expect(State state, String id, Class<S> type) {
    Step step = state.position().nowhere() ? null : walk.step(state);
    if (!type.isInstance(step) || !step.id().equals(id)) {
      String here = step == null ? "the start" : step.id();
      throw new RecordMismatchException(
          "the log goes on at step " + id + ", but the procedure stands at " + here);
    }
    return type.cast(step);
  }
}
