package quarterturn.session.engine;

import java.time.Instant;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import quarterturn.craft.BuzzCure;
import quarterturn.craft.ContactMap;
import quarterturn.craft.Window;
import quarterturn.craft.rod.Advisor;
import quarterturn.procedure.Fact;
import quarterturn.procedure.Library;
import quarterturn.procedure.Limits;
import quarterturn.procedure.Picture;
import quarterturn.procedure.Procedure;
import quarterturn.procedure.Step;
import quarterturn.procedure.kind.Kind;
import quarterturn.procedure.kind.Quantity;
import quarterturn.session.Answer;
import quarterturn.session.Bench;
import quarterturn.session.Corrections;
import quarterturn.session.Event;
import quarterturn.session.Handover;
import quarterturn.session.Lists;
import quarterturn.session.Overview;
import quarterturn.session.Place;
import quarterturn.session.Prompt;
import quarterturn.session.RecordMismatchException;
import quarterturn.session.RefusedException;
import quarterturn.session.Stage;

/**
 * The engine: a pure function from events to the next prompt, and from an answer to an event. It
 * has no state; the same events give the same prompt.
 */
public final class Engine {
  private final Library library;
  private final Walk walk;
  private final Fold fold;
  private final Prompter prompter;
  private final Examiner examiner;
  private final Merging merging;

  public Engine(Library library, Advisor advisor) {
    this.library = library;
    this.walk = new Walk(library, new Guard(library.limits(), advisor));
    this.fold = new Fold(library, walk);
    this.prompter = new Prompter(library, walk);
    this.examiner = new Examiner(walk);
    this.merging = new Merging(fold, walk, prompter, new ShortPath(walk));
  }

  State apply(State state, Event event) {
    return fold.apply(state, event);
  }

  /**
   * The state that events add up to.
   *
   * @throws RecordMismatchException when the events don't fit the procedure
   */
  State replay(List<Event> events) {
    if (events.isEmpty() || !(events.get(0) instanceof Event.Started started)) {
      throw new RecordMismatchException("the log does not begin with a start");
    }
    State state = fold.start(started);
    for (Event event : events.subList(1, events.size())) {
      state = apply(state, event);
    }
    return state;
  }

  Limits.Clocks clocks() {
    return library.limits().clocks();
  }

  Prompter.Next next(State state, Instant now) {
    return prompter.next(state, now);
  }

  /** The prompt of a state, merged with those after it that can be shown together. */
  Merging.Merged merged(State state, Prompt prompt, Instant now) {
    return merging.of(state, prompt, now);
  }

  /** The recorded value that a pause asks for, or null where no pause asks. */
  @Nullable Answer onRecord(State state) {
    return new Pauses(walk).onRecord(state);
  }

  Event examine(State state, Prompt prompt, Answer answer, Instant now) throws RefusedException {
    return examiner.examine(state, prompt, answer, now);
  }

  /** What the readings of all steps can plausibly be. */
  Map<Quantity, Bench.Plausible> plausible() {
    Map<Quantity, Bench.Plausible> all = new EnumMap<>(Quantity.class);
    for (Procedure procedure : library.procedures().values()) {
      for (Step step : procedure.steps().values()) {
        if (step instanceof Step.Measure one) {
          all.merge(
              one.quantity(), new Bench.Plausible(one.least(), one.most()), Bench.Plausible::with);
        }
      }
    }
    return all;
  }

  /** What is on record of how the instrument is made, and not asked yet. */
  List<Bench.OnRecord> recorded(State state) {
    return new ShortPath(walk).all(state);
  }

  /**
   * The option ids of every step with a choice, by the step's id, of all steps with that id
   * together; an empty list where the step takes words.
   */
  Map<String, List<String>> choices() {
    Map<String, List<String>> choices = new LinkedHashMap<>();
    for (Procedure procedure : library.procedures().values()) {
      for (Step step : procedure.steps().values()) {
        if (step instanceof Step.Choose choose) {
          // Several procedures may have a step of this id; an answer is held to the one that asks.
          choices
              .computeIfAbsent(step.id(), id -> new ArrayList<>())
              .addAll(choose.options().stream().map(Step.Option::id).toList());
        }
        if (step instanceof Step.Note) {
          choices.putIfAbsent(step.id(), new ArrayList<>());
        }
        if (step instanceof Step.Pause pause
            && pause.lines().contains(new Step.Line.OfDirection())) {
          choices.put(Step.Line.OfDirection.WORD, Pauses.directions());
        }
      }
    }
    return choices;
  }

  /** Whether the last reading asks for a turn of the rod. */
  boolean asksForTurn(State state, Instant now) {
    return walk.asksForTurn(state, now);
  }

  /** The steps that follow the present one for certain, a line each. */
  List<String> coming(State state, Instant now) {
    return prompter.coming(state, now);
  }

  /**
   * What a session leaves to a repairer.
   *
   * @param events all its events, oldest first
   * @throws RecordMismatchException when the events don't fit the procedure
   */
  public Handover handover(List<Event> events) {
    State state = replay(events);
    List<Stage> stages = walk.stages(state, state.last()).all();
    return new Handover(forRepairer(state), stages, Standing.of(state));
  }

  /**
   * The place at which each event of a session happened.
   *
   * @param events all its events, oldest first
   * @throws RecordMismatchException when the events don't fit the procedure
   */
  public Map<Event, Place> places(List<Event> events) {
    Map<Event, Place> places = new IdentityHashMap<>();
    State state = replay(events.subList(0, Math.min(1, events.size())));
    for (Event event : events.subList(1, events.size())) {
      if (!state.position().nowhere()) {
        places.put(event, state.place());
      }
      state = apply(state, event);
    }
    return places;
  }

  /**
   * The state that a session left its instrument in.
   *
   * @param events all its events, oldest first
   */
  public String standing(List<Event> events) {
    try {
      State state = replay(events);
      return state.pending().open() == null ? Standing.of(state) : left(events);
    } catch (RecordMismatchException changed) {
      return left(events);
    }
  }

  /**
   * Where a session is, as its faces show it.
   *
   * @param events all its events, oldest first
   * @throws RecordMismatchException when the events don't fit the procedure
   */
  public String place(String session, List<Event> events) {
    State state = replay(events);
    return overview(state, session, state.last()).place();
  }

  /** As {@link #standing}, from the events alone, where the procedure can't be read. */
  public static String left(List<Event> events) {
    return Standing.of(events);
  }

  /** The last end of each procedure that leaves something to a repairer. */
  List<Handover.Point> forRepairer(State state) {
    Map<String, Handover.Point> points = new LinkedHashMap<>();
    for (Place place : state.position().path()) {
      if (library.procedure(place.procedure()).step(place.step()) instanceof Step.End end) {
        points.remove(place.procedure());
        if (end.forRepairer()) {
          String text = prompter.text(state, end, state.last());
          points.put(place.procedure(), new Handover.Point(place.procedure(), end.outcome(), text));
        }
      }
    }
    Event.Ended ended = state.pending().ended();
    if (ended != null && ended.handOver()) {
      // A limit hands over too, at a step that is no end.
      String procedure = state.place().procedure();
      points.put(procedure, new Handover.Point(procedure, ended.outcome(), ended.why()));
    }
    return List.copyOf(points.values());
  }

  Overview overview(State state, String session, Instant now) {
    Kind kind = walk.kind(state);
    Window window = walk.window(state);
    Procedure procedure = library.procedure(state.procedure());
    List<String> parts = procedure.parts();
    String part = state.position().nowhere() ? parts.get(0) : walk.step(state).words().part();
    String named = state.started().instrument();
    String instrument = named != null ? named : kind == null ? "unnamed" : kind.name();
    String source =
        kind == null || state.style() == null ? null : kind.target(state.style()).source();
    return new Overview(
            session,
            instrument,
            kind,
            window,
            source,
            state.started().role(),
            stage(state, procedure),
            parts,
            Math.max(0, parts.indexOf(part)),
            done(state, procedure, parts, parts.indexOf(part)),
            trail(state),
            state.history().net(),
            state.history().today(now),
            library.limits().day(),
            rodPlace(state, procedure),
            walk.stages(state, now).all(),
            contact(state, kind),
            Standing.parting(state))
        .reading(others(state))
        .guided(library.results().guide());
  }

  /** The titles of the procedures that the session is in, callers first. */
  private String stage(State state, Procedure procedure) {
    return state.position().nowhere()
        ? procedure.title()
        : state.position().places().stream()
            .map(place -> library.procedure(place.procedure()).title())
            .distinct()
            .collect(Collectors.joining(": "));
  }

  /** The parts before the present one in which a step was answered since the procedure began. */
  private static Set<Integer> done(
      State state, Procedure procedure, List<String> parts, int present) {
    List<Place> path = state.position().path();
    int from = Math.max(0, path.lastIndexOf(new Place(procedure.id(), procedure.begin())));
    Set<String> answered = new HashSet<>();
    Corrections.standing(state.log()).forEach(event -> answered.add(Answers.step(event)));
    Set<Integer> done = new HashSet<>();
    for (Place place : path.subList(from, path.size())) {
      if (place.procedure().equals(procedure.id()) && answered.contains(place.step())) {
        done.add(parts.indexOf(procedure.step(place.step()).words().part()));
      }
    }
    done.removeIf(part -> part < 0 || part >= present);
    return done;
  }

  /** The readings of other quantities than relief. */
  private List<Overview.Entry.Other> others(State state) {
    List<Overview.Entry.Other> others = new ArrayList<>();
    Kind kind = walk.kind(state);
    for (Reading reading : state.history().readings()) {
      Event.Read read = reading.read();
      if (!reading.relief() && !read.missing()) {
        boolean stale =
            state.history().changesSince(reading.changesBefore()).stream()
                .anyMatch(one -> library.results().spoils(one.change(), read.quantity()));
        String string = read.string() == null ? "" : read.string();
        string = kind == null ? string : Blanks.called(state, kind, string, false);
        others.add(
            new Overview.Entry.Other(
                read.at(), read.quantity(), string, EngineQuestions.value(read), stale));
      }
    }
    return others;
  }

  private @Nullable ContactMap contact(State state, @Nullable Kind kind) {
    boolean asked =
        !state.position().nowhere() && walk.step(state).words().picture() == Picture.CONTACT;
    if (!asked || kind == null || state.style() == null) {
      return null;
    }
    BuzzCure cure = new Figures(state, library, kind, state.style()).cure();
    return cure == null ? null : cure.found();
  }

  /** Id of the option chosen for the place of the rod, or null. */
  private static @Nullable String rodPlace(State state, Procedure procedure) {
    for (Step step : procedure.steps().values()) {
      String chosen = state.position().chosen().get(procedure.id() + "/" + step.id());
      if (step instanceof Step.Choose choose && chosen != null) {
        for (Step.Option option : choose.options()) {
          if (option.id().equals(chosen) && option.establishes().contains(Fact.ROD_IDENTIFIED)) {
            return chosen;
          }
        }
      }
    }
    return null;
  }

  private static List<Overview.Entry> trail(State state) {
    List<Overview.Entry> trail = new ArrayList<>();
    List<TurnMade> turns = state.history().turns();
    List<Reading> readings = state.history().readings();
    int turn = 0;
    for (int i = 0; i < readings.size(); i++) {
      Reading reading = readings.get(i);
      for (; turn < Math.min(reading.turnsBefore(), turns.size()); turn++) {
        trail.add(entry(state, turns.get(turn)));
      }
      Event.Read read = reading.read();
      if (reading.relief() && read.which() != null && read.bracket() != null) {
        boolean stale = i < state.history().spoiled() || reading.turnsBefore() != turns.size();
        trail.add(new Overview.Entry.Reading(read.at(), read.which(), read.bracket(), stale));
      }
    }
    turns.subList(turn, turns.size()).forEach(made -> trail.add(entry(state, made)));
    return trail;
  }

  private static Overview.Entry entry(State state, TurnMade made) {
    Event said =
        Lists.last(
            state.log(), event -> event instanceof Event.OnRod && event.at().equals(made.at()));
    return said instanceof Event.Recalled recalled
        ? new Overview.Entry.Turned(made.at(), made.turn(), recalled.feel(), recalled.sure())
        : new Overview.Entry.Turned(
            made.at(), made.turn(), made.feel(), said != null || made.sure());
  }
}
