package quarterturn.session.engine;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import quarterturn.craft.rod.Advice;
import quarterturn.procedure.Adjustment;
import quarterturn.procedure.Hazard;
import quarterturn.procedure.Library;
import quarterturn.procedure.Picture;
import quarterturn.procedure.Procedure;
import quarterturn.procedure.Step;
import quarterturn.procedure.Words;
import quarterturn.procedure.condition.Feel;
import quarterturn.procedure.condition.Role;
import quarterturn.procedure.kind.Kind;
import quarterturn.procedure.kind.Quantity;
import quarterturn.procedure.kind.Style;
import quarterturn.procedure.kind.Which;
import quarterturn.session.Event;
import quarterturn.session.Prompt;
import quarterturn.session.PromptText;
import quarterturn.session.Stage;
import quarterturn.unit.Bracket;
import quarterturn.unit.Turn;

/** Finds what comes next for a state: a prompt to show, or an event to record first. */
final class Prompter {
  private final Library library;
  private final Walk walk;
  private final ShortPath path;
  private final Pauses pauses;

  Prompter(Library library, Walk walk) {
    this.library = library;
    this.walk = walk;
    this.path = new ShortPath(walk);
    this.pauses = new Pauses(walk);
  }

  /** A prompt to show, or an event to record first. */
  sealed interface Next {
    record Show(Prompt prompt) implements Next {}

    record Record(Event event) implements Next {}
  }

  Next next(State state, Instant now) {
    Next own = own(state, now);
    return own != null ? own : ofStep(state, walk.step(state), now);
  }

  private @Nullable Next own(State state, Instant now) {
    if (state.pending().ended() != null) {
      PromptText said = ended(state, state.pending().ended());
      String outcome = state.pending().ended().outcome();
      return show(
          state.pending().ended().handOver()
              ? new Prompt.HandOver(said, outcome)
              : new Prompt.Done(said, outcome));
    }
    if (state.pending().away() != null) {
      Procedure procedure = library.procedure(state.procedure());
      String recap = EngineQuestions.recap(state, state.pending().away(), procedure);
      return show(new Prompt.Tell(said(state, EngineQuestions.RESUME, recap, null), true));
    }
    if (state.kind() == null || !library.kinds().containsKey(state.kind())) {
      return show(
          new Prompt.Choose(
              said(state, EngineQuestions.KIND, "What instrument is it?", null), kinds()));
    }
    if (state.style() == null) {
      return show(
          new Prompt.Choose(
              said(state, EngineQuestions.STYLE, STYLE_ASK, STYLE_WHY), styles(state)));
    }
    if (state.pending().fault() != null) {
      String why =
          "This procedure is at fault: " + state.pending().fault() + ". Nothing more is turned.";
      return record(new Event.Ended(now, state.place().step(), true, "procedure-fault", why));
    }
    if (state.pending().refused() != null) {
      return record(
          new Event.Ended(
              now,
              EngineQuestions.NEEDS,
              false,
              EngineQuestions.NOT_FRESH,
              state.pending().refused()));
    }
    if (state.position().entering()) {
      return show(needs(state, now));
    }
    if (state.pending().recalling() && state.pending().open() != null) {
      return show(recall(state, state.pending().open()));
    }
    return null;
  }

  private static final String STYLE_ASK = "How does the player play?";
  private static final String STYLE_WHY =
      "A string that is hit harder swings wider and needs more room over the middle of the neck.";

  private List<Prompt.Option> kinds() {
    return library.kinds().values().stream()
        .map(kind -> new Prompt.Option(kind.id(), kind.name()))
        .toList();
  }

  private List<Prompt.Option> styles(State state) {
    Kind kind = walk.kind(state);
    List<Prompt.Option> options = new ArrayList<>();
    for (Style style : List.of(Style.MEDIUM, Style.LIGHT, Style.HARD, Style.SLIDE)) {
      if (kind != null && !kind.styles().contains(style)) {
        continue;
      }
      String touch =
          switch (style) {
            case LIGHT -> "Light touch, low action";
            case MEDIUM -> "Medium touch";
            case HARD -> "Hard attack, plectrum or slap";
            case SLIDE -> "With a slide on the strings";
          };
      String window = kind == null ? "" : ": relief " + kind.target(style).window();
      options.add(new Prompt.Option(style.word(), touch + window));
    }
    return options;
  }

  private Prompt needs(State state, Instant now) {
    String text =
        "This stage builds on results that are stale, or were never read.\n"
            + walk.lacking(state, now);
    String why =
        "A stage that builds on a stale reading spoils the work after it. It is like a wall on a"
            + " moved foundation.";
    return new Prompt.Choose(
        said(state, EngineQuestions.NEEDS, text, why),
        List.of(
            new Prompt.Option(EngineQuestions.TAKE_THE_WAY, "Take them anew now, in this order"),
            new Prompt.Option(EngineQuestions.STOP, "Stop here for now")));
  }

  private Prompt recall(State state, Event.Offered open) {
    PromptText said = said(state, EngineQuestions.RECALL, Recall.question(open.turn()), Recall.WHY);
    return new Prompt.Choose(said, Recall.options());
  }

  private Next ofStep(State state, Step step, Instant now) {
    if (path.toConfirm(state, step)) {
      String text = String.join("\n", path.record(state)) + "\nAs recorded?";
      return show(
          new Prompt.Choose(
              said(state, EngineQuestions.AS_RECORDED, text, null),
              EngineQuestions.AS_RECORDED_OPTIONS));
    }
    String passed = path.skipped(state, step, now);
    if (passed != null) {
      return record(new Event.Passed(now, step.id(), passed));
    }
    if (step instanceof Step.TurnRod && since(state)) {
      return show(
          new Prompt.Choose(
              said(
                  state,
                  EngineQuestions.SINCE,
                  EngineQuestions.SINCE_ASK,
                  EngineQuestions.SINCE_WHY),
              EngineQuestions.SINCE_OPTIONS));
    }
    Guard.Ruling ruling = null;
    if (step instanceof Step.TurnRod && state.pending().waiting() != null) {
      PromptText said = said(state, step.id(), EngineQuestions.REST, null);
      return show(wait(state, said, state.pending().waiting(), true, null));
    }
    if (step instanceof Step.TurnRod turn) {
      ruling = walk.rule(state, turn, now);
      if (ruling instanceof Guard.Ruling.Stops stops && state.pending().open() == null) {
        return record(new Event.Ended(now, step.id(), true, stops.outcome(), stops.why()));
      }
      if (ruling instanceof Guard.Ruling.Rests rests && state.pending().open() == null) {
        return record(new Event.WaitBegan(now, step.id(), rests.until()));
      }
    }
    List<Hazard> ahead =
        hazards(step).stream().filter(hazard -> !state.accepted().contains(hazard.id())).toList();
    if (!ahead.isEmpty()) {
      // The step itself is not shown before its hazards are accepted.
      return show(new Prompt.Caution(said(state, step.id(), EngineQuestions.BEFORE, null), ahead));
    }
    return next(state, step, ruling, now);
  }

  /** Whether to ask what was done since the last session: once, before this one's first turn. */
  private static boolean since(State state) {
    return state.history().turns().isEmpty()
        && state.history().jumped()
        && state.position().chosen(EngineQuestions.SINCE) == null;
  }

  private Next next(State state, Step step, Guard.@Nullable Ruling ruling, Instant now) {
    return step.match(
        new Step.Cases<>(
            tell -> show(new Prompt.Tell(said(state, tell, null, now))),
            choose -> show(new Prompt.Choose(said(state, choose, null, now), options(choose))),
            note -> show(new Prompt.Write(said(state, note, null, now))),
            pause -> show(pauses.prompt(state, pause, said(state, pause, null, now))),
            adjust -> show(new Prompt.Tell(said(state, adjust, null, now))),
            measure -> show(settled(state, measure(state, measure, now))),
            this::silent,
            turn -> turn(state, turn, ruling, now),
            wait -> wait(state, wait, now),
            this::silent,
            done -> ended(state, done, false, now),
            handOver -> ended(state, handOver, true, now)));
  }

  private static List<Prompt.Option> options(Step.Choose choose) {
    return choose.options().stream().map(o -> new Prompt.Option(o.id(), o.label())).toList();
  }

  private Next silent(Step.Silent step) {
    throw new IllegalStateException("a step that asks nothing can't be the present one: " + step);
  }

  private Next wait(State state, Step.Wait wait, Instant now) {
    Event.WaitBegan waiting = state.pending().waiting();
    if (waiting == null) {
      Instant until = now.plus(Duration.ofMinutes(wait.minutes()));
      return record(new Event.WaitBegan(now, wait.id(), until));
    }
    return show(wait(state, said(state, wait, null, now), waiting, wait.rest(), wait.meanwhile()));
  }

  private Next ended(State state, Step.End end, boolean handOver, Instant now) {
    List<String> undone = undone(state);
    if (!undone.isEmpty()) {
      String text =
          "With this answer the session ends. "
              + text(state, end, now)
              + "\nLeft undone: "
              + String.join(", ", undone)
              + ".";
      return show(
          new Prompt.Choose(
              said(state, EngineQuestions.ENDS, text, null), EngineQuestions.ENDS_OPTIONS));
    }
    return record(new Event.Ended(now, end.id(), handOver, end.outcome(), text(state, end, now)));
  }

  /**
   * The parts that are left undone where an answer, and nothing that was read or felt, ends the
   * session before its time; none where that was asked about.
   */
  private List<String> undone(State state) {
    Event last = Notes.lastAnswer(state);
    Procedure procedure = library.procedure(state.place().procedure());
    String id =
        last instanceof Event.Chose chose
            ? chose.step()
            : last instanceof Event.Read read && read.missing() ? read.step() : "";
    Step answered = procedure.steps().get(id);
    if (answered == null || state.position().chosen().containsKey(EngineQuestions.ENDS)) {
      return List.of();
    }
    List<String> parts = procedure.parts();
    Set<String> seen =
        state.position().path().stream()
            .filter(place -> place.procedure().equals(procedure.id()))
            .map(place -> procedure.step(place.step()))
            .filter(step -> !(step instanceof Step.End))
            .map(step -> step.words().part())
            .collect(Collectors.toSet());
    return parts.subList(parts.indexOf(answered.words().part()) + 1, parts.size()).stream()
        .filter(part -> !seen.contains(part))
        .toList();
  }

  /** What an end says, with the figures of the present state. */
  String text(State state, Step.End end, Instant now) {
    return said(state, end, null, now).text();
  }

  /** The step's hazards, for a rod turn with those of every turn; the worst first. */
  private List<Hazard> hazards(Step step) {
    Set<String> ids = new LinkedHashSet<>(step.words().hazards());
    if (step instanceof Step.TurnRod) {
      ids.addAll(library.limits().turnHazards());
    }
    return library.hazards().values().stream()
        .filter(hazard -> ids.contains(hazard.id()))
        .sorted(Comparator.comparing(Hazard::word))
        .toList();
  }

  private static Prompt wait(
      State state,
      PromptText said,
      Event.WaitBegan waiting,
      boolean rest,
      @Nullable String meanwhile) {
    boolean mayLift = state.started().role() == Role.TECHNICIAN;
    String may = meanwhile != null ? meanwhile : EngineQuestions.meanwhile(state);
    return new Prompt.Wait(said, waiting.at(), waiting.until(), rest, mayLift, may);
  }

  private Next turn(State state, Step.TurnRod step, Guard.@Nullable Ruling ruling, Instant now) {
    if (state.pending().open() == null) {
      if (ruling instanceof Guard.Ruling.Turns turns) {
        Turn asked = turns.advice().turn();
        Prompt.Expected range = walk.expected(state, asked);
        Bracket expected = range == null ? null : new Bracket(range.lowMm(), range.highMm());
        Turn freed = state.history().freed(asked);
        return record(new Event.Offered(now, step.id(), asked, freed, expected));
      }
      String why = "A turn came up without a fresh reading. Nothing more is turned.";
      return record(new Event.Ended(now, step.id(), true, "procedure-fault", why));
    }
    Turn turn = state.pending().open().turn();
    Advice advice = ruling instanceof Guard.Ruling.Turns turns ? turns.advice() : null;
    PromptText said = said(state, step, advice == null ? null : advice.why(), now);
    if (advice != null
        && state.started().role() == Role.TECHNICIAN
        && !advice.numbers().isEmpty()) {
      said = said.noting(List.of(advice.numbers()));
    }
    Turn freed = state.pending().open().freed();
    if (freed != null) {
      said = said.leading(EngineQuestions.freeing(freed));
    }
    boolean canUndo =
        !state.pending().undoAsked()
            && state.history().lastMoved() != null
            && step.amount() instanceof Step.Amount.Advised;
    Turn most = library.limits().perReading();
    Turn limit = step.limit().compareTo(most) < 0 ? step.limit() : most;
    Set<Feel> stops = library.limits().stopFeels();
    boolean back = step.amount() instanceof Step.Amount.Undo;
    return show(
        new Prompt.TurnRod(said, turn, limit, walk.expected(state, turn), canUndo, stops, back));
  }

  /**
   * The prompt of a reading, which confirms too that the strings have stood at pitch, where the
   * wait for that was passed over.
   */
  private Prompt settled(State state, Prompt measure) {
    boolean onString = measure instanceof Prompt.Measure asked && asked.quantity().onString();
    Step.Wait wait = onString ? path.unwaited(state) : null;
    if (wait == null) {
      return measure;
    }
    String text =
        "All strings have stood at pitch for "
            + EngineQuestions.span(Duration.ofMinutes(wait.minutes()))
            + "; if not, let them first.";
    return measure.after(said(state, wait.id(), text, null), false);
  }

  private Prompt measure(State state, Step.Measure measure, Instant now) {
    PromptText said = said(state, measure, null, now);
    Kind kind = walk.kind(state);
    if (!measure.quantity().onString() || measure.which() == null || kind == null) {
      return new Prompt.Measure(said, measure.quantity(), List.of(), 0, null, null, measure.step());
    }
    int last = kind.strings().size() - 1;
    int string = string(state, measure.which(), last);
    Which which = string == 0 ? Which.LOWEST : string == last ? Which.HIGHEST : null;
    return new Prompt.Measure(
        said,
        measure.quantity(),
        measure.quantity().held(kind),
        measure.quantity().readAt(kind),
        which,
        kind.strings().get(string),
        measure.step());
  }

  private static int string(State state, Which which, int last) {
    return switch (which) {
      case LOWEST -> 0;
      case HIGHEST -> last;
      case EACH -> state.position().string();
    };
  }

  private PromptText said(State state, Step step, @Nullable String moreWhy, Instant now) {
    Words words = step.words();
    Turn turn = state.pending().open() == null ? lastTurn(state) : state.pending().open().turn();
    String wait =
        step instanceof Step.Wait w ? EngineQuestions.span(Duration.ofMinutes(w.minutes())) : "";
    Blanks fill =
        new Blanks(
            state,
            library,
            walk.kind(state),
            turn,
            wait,
            atString(state, step),
            stale(state, now),
            () -> walk.nextTurn(state, now));
    List<Hazard> reminders =
        hazards(step).stream().filter(hazard -> state.accepted().contains(hazard.id())).toList();
    String why = words.why() == null ? null : fill.in(words.why());
    if (moreWhy != null) {
      why = why == null ? moreWhy : moreWhy + "\n" + why;
    }
    String text = fill.in(words.forRole(role(state)));
    String full = fill.in(words.text());
    if (!full.equals(text)) {
      why = why == null ? full : full + "\n" + why;
    }
    return new PromptText(
        state.place().procedure(),
        step.id(),
        words.part(),
        text,
        why,
        reminders,
        words.picture(),
        notes(state, step, now));
  }

  /**
   * The steps that follow the present one for certain, a line each; empty where there is no present
   * step.
   */
  List<String> coming(State state, Instant now) {
    if (!state.atStep()) {
      return List.of();
    }
    Procedure procedure = library.procedure(state.place().procedure());
    Blanks fill =
        new Blanks(
            state,
            library,
            walk.kind(state),
            null,
            "a while",
            null,
            stale(state, now),
            () -> "...");
    return new Coming(procedure, fill::known).after(walk.step(state));
  }

  private List<String> notes(State state, Step step, Instant now) {
    List<String> notes = Notes.of(state, walk.kind(state), walk.window(state));
    if (Notes.lastAnswer(state) instanceof Event.Started && ShortPath.taken(state)) {
      path.line(state).ifPresent(notes::add);
    }
    if (ShortPath.taken(state)) {
      notes.addAll(new Answered(library, walk).notes(state, step, Notes.lastAnswer(state), now));
    }
    return notes;
  }

  /** The role whose wording is used: a technician's on the short path, else a beginner's. */
  private static Role role(State state) {
    return ShortPath.taken(state) ? Role.TECHNICIAN : Role.BEGINNER;
  }

  private @Nullable AtString atString(State state, Step step) {
    Kind kind = walk.kind(state);
    if (kind == null || state.style() == null) {
      return null;
    }
    if (step instanceof Step.Adjust adjust) {
      Adjustment what = adjust.adjustment();
      int string = state.position().string();
      return new AtString(
          state, library.results(), kind, state.style(), what.quantity(), 0, what, string);
    }
    if (!(step instanceof Step.Measure measure) || measure.which() == null) {
      return null;
    }
    Quantity quantity = measure.quantity();
    int string = string(state, measure.which(), kind.strings().size() - 1);
    return quantity.ofPart() || kind.windows().containsKey(quantity)
        ? new AtString(
            state, library.results(), kind, state.style(), quantity, measure.step(), null, string)
        : null;
  }

  private String stale(State state, Instant now) {
    List<String> stale =
        walk.stages(state, now).all().stream()
            .filter(stage -> stage.status() == Stage.Status.STALE)
            .map(Stage::name)
            .toList();
    return stale.isEmpty() ? "nothing" : String.join(", ", stale);
  }

  private static @Nullable Turn lastTurn(State state) {
    TurnMade last = state.history().lastTurn();
    return last == null ? null : last.turn();
  }

  private PromptText said(State state, String id, String text, @Nullable String why) {
    String part = state.position().nowhere() ? "" : walk.step(state).words().part();
    @Nullable Picture none = null;
    return new PromptText(state.procedure(), id, part, text, why, List.of(), none, List.of());
  }

  private PromptText ended(State state, Event.Ended ended) {
    String part = walk.step(state).words().part();
    return new PromptText(
        state.place().procedure(),
        ended.step(),
        part,
        ended.why(),
        null,
        List.of(),
        null,
        Notes.closing(state));
  }

  private static Next show(Prompt prompt) {
    return new Next.Show(prompt);
  }

  private static Next record(Event event) {
    return new Next.Record(event);
  }
}
