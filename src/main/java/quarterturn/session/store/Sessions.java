package quarterturn.session.store;

import java.io.FileNotFoundException;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Random;
import org.jspecify.annotations.Nullable;
import quarterturn.craft.rod.BeliefAdvisor;
import quarterturn.procedure.Library;
import quarterturn.procedure.Outline;
import quarterturn.procedure.Procedure;
import quarterturn.procedure.Results;
import quarterturn.procedure.Step;
import quarterturn.procedure.UnreadableException;
import quarterturn.procedure.check.Checker;
import quarterturn.procedure.condition.Role;
import quarterturn.procedure.kind.Style;
import quarterturn.procedure.read.Shelf;
import quarterturn.session.Due;
import quarterturn.session.Event;
import quarterturn.session.Instrument;
import quarterturn.session.Neck;
import quarterturn.session.OwnMake;
import quarterturn.session.PastAnswers;
import quarterturn.session.Program;
import quarterturn.session.RecordMismatchException;
import quarterturn.session.engine.CarriedOn;
import quarterturn.session.engine.Engine;
import quarterturn.session.engine.EngineQuestions;
import quarterturn.session.engine.LiveBench;
import quarterturn.session.journal.Journal;
import quarterturn.session.listing.Glance;
import quarterturn.session.listing.Glances;
import quarterturn.session.listing.Listings;
import quarterturn.unit.NotUnderstoodException;

/**
 * Opens sessions.
 *
 * @param own the folder of the user's own procedures and rules, or null
 * @param by who works, for the record of a session that begins or goes on; null where that is not
 *     said
 * @param program how the program is called to find these sessions again
 */
public record Sessions(
    Store store, @Nullable Path own, @Nullable String by, Clock clock, Program program) {
  /** Those of a program that needs no options to be called again. */
  public Sessions(Store store, @Nullable Path own, @Nullable String by, Clock clock) {
    this(store, own, by, clock, Program.here());
  }

  /** Those of whom nobody said who works. */
  public Sessions(Store store, @Nullable Path own, Clock clock) {
    this(store, own, null, clock);
  }

  /**
   * The properties of a session to be started.
   *
   * @param lesson id of the lesson that it is part of, or null
   */
  public record Wish(
      String procedure,
      @Nullable String instrument,
      @Nullable String kind,
      @Nullable Style style,
      Role role,
      @Nullable String lesson) {
    /** A session outside of lessons. */
    public Wish(
        String procedure,
        @Nullable String instrument,
        @Nullable String kind,
        @Nullable Style style,
        Role role) {
      this(procedure, instrument, kind, style, role, null);
    }
  }

  /**
   * An open session, to be closed when the face is done with the bench.
   *
   * @param held the resources to close with it, the last one first
   */
  public record Opened(String name, LiveBench bench, Closing held, @Nullable String notice)
      implements AutoCloseable {
    @Override
    public void close() throws IOException {
      held.close();
    }
  }

  public Library library(String procedure) throws IOException, UnreadableException {
    return new Shelf(own).load(procedure);
  }

  /** A library with the kinds, hazards, limits and results, but without procedures. */
  public Library rules() throws IOException, UnreadableException {
    return new Shelf(own).rules();
  }

  /** The limits and results. */
  public Outline outline() throws IOException, UnreadableException {
    return new Shelf(own).outline();
  }

  /** {@code procedure}, or the usual procedure's id for null. */
  public String named(@Nullable String procedure) throws IOException, UnreadableException {
    return procedure != null ? procedure : outline().results().usual();
  }

  /** The library with a procedure, which is refused if checking it finds a fault. */
  public Library proven(String procedure) throws IOException, UnreadableException {
    return Checker.proven(new Shelf(own), procedure);
  }

  /**
   * What other records mean for a session to be started, to be asked about before it is.
   *
   * @throws NotUnderstoodException when the kind or the instrument does not exist
   */
  public Beginning beginning(Wish wish) throws IOException, UnreadableException {
    return beginning(wish, proven(wish.procedure()));
  }

  /** As {@link #beginning(Wish)}, with the procedure's library, which was proven. */
  public Beginning beginning(Wish wish, Library library) throws IOException {
    Instrument instrument = wish.instrument() == null ? null : store.instrument(wish.instrument());
    String kind = wish.kind() != null ? wish.kind() : instrument == null ? null : instrument.kind();
    if (kind != null) {
      library.kind(kind);
    }
    String name = instrument == null ? null : instrument.name();
    Records records = store.records(name, false, library.limits(), clock, null);
    Opening opening = new Opening(records, null, name, kind, now(), library.limits(), List.of());
    Wish whole = new Wish(wish.procedure(), name, kind, wish.style(), wish.role(), wish.lesson());
    return new Beginning(library, whole, null, opening);
  }

  /** What other records mean for a session that goes on, to be asked about before it does. */
  public Beginning beginning(String session) throws IOException, UnreadableException {
    return beginning(session, proven(followed(session)));
  }

  /** The id of the procedure that a session follows, which is there; see {@link #lost}. */
  public String followed(String session) throws IOException {
    Event.Started started = started(session);
    String lost = lost(started);
    if (lost != null) {
      throw new FileNotFoundException(lost);
    }
    return started.procedure();
  }

  /** Why a session's procedure is not there, and how to go on; null where it is. */
  public @Nullable String lost(Event.Started session) {
    return new OwnFolder(own).lost(session);
  }

  /** The start of a session that can go on; what is wrong with any other is said at once. */
  private Event.Started started(String session) throws IOException {
    Journal.Contents contents = store.read(session);
    if (contents.damaged()) {
      store.open(session).close();
    }
    List<Event> events = contents.events();
    if (events.isEmpty() || !(events.get(0) instanceof Event.Started started)) {
      throw new IOException("session " + session + " holds nothing yet; start a new one");
    }
    Event last = events.get(events.size() - 1);
    if (last instanceof Event.Ended || last instanceof Event.Discarded) {
      throw new RecordMismatchException(
          last instanceof Event.Ended ? "this session has ended" : "this session was discarded");
    }
    return started;
  }

  /** As {@link #beginning(String)}, with the procedure's library, which was proven. */
  public Beginning beginning(String session, Library library) throws IOException {
    Event.Started was = started(session);
    Records records = store.records(was.instrument(), true, library.limits(), clock, null);
    Opening opening =
        new Opening(records, session, was.instrument(), null, now(), library.limits(), List.of());
    String kind = was.kind() != null ? was.kind() : opening.neck().kind();
    Wish wish =
        new Wish(was.procedure(), was.instrument(), kind, was.style(), was.role(), was.lesson());
    return new Beginning(library, wish, session, opening.ofKind(kind));
  }

  /**
   * The state that an unfinished session left its instrument in.
   *
   * @throws RecordMismatchException where it has ended or was discarded
   */
  public String standing(String session) throws IOException {
    started(session);
    return standing(store.read(session).events());
  }

  private String standing(List<Event> events) throws IOException {
    Library library;
    try {
      library = library(((Event.Started) events.get(0)).procedure());
    } catch (IOException | UnreadableException lost) {
      return Engine.left(events);
    }
    return new Engine(library, new BeliefAdvisor()).standing(events);
  }

  /**
   * Discards an unfinished session: it is kept and not offered any more.
   *
   * @return the state that its instrument is left in
   * @throws RecordMismatchException where it has ended or was discarded
   */
  public String discard(String session) throws IOException {
    started(session);
    try (Journal journal = store.open(session)) {
      List<Event> events = journal.found().events();
      Instant last = events.get(events.size() - 1).at();
      String standing = standing(events);
      Instant at = now().isBefore(last) ? last : now();
      journal.append(List.of(new Event.Discarded(at, standing)));
      return standing;
    }
  }

  private Instant now() {
    return clock.instant().truncatedTo(ChronoUnit.SECONDS);
  }

  /** Starts a session of whose records nothing more is said. */
  public Opened start(Wish wish) throws IOException, UnreadableException {
    return open(beginning(wish));
  }

  /** Resumes a session of whose records nothing more is said. */
  public Opened resume(String session) throws IOException, UnreadableException {
    return open(beginning(session));
  }

  /**
   * Starts or resumes a session; its first event is on disk when this returns. A session whose
   * record no longer fits its procedure is ended, and a new one replaces it.
   */
  public Opened open(Beginning beginning) throws IOException {
    Closing held = new Closing();
    try {
      return beginning.session() == null
          ? started(beginning, null, held)
          : resumed(beginning, beginning.session(), held);
    } catch (IOException | RuntimeException e) {
      held.close();
      throw e;
    }
  }

  /** What is on record now, and what the person said of it. */
  private Opening current(Beginning beginning) throws IOException {
    Opening opening = beginning.opening();
    return opening.with(
        store.records(
            opening.instrument(),
            opening.session() != null,
            beginning.library().limits(),
            clock,
            opening.records()));
  }

  /** The start of a session with all that other records say, at the present time. */
  public Event.Started started(Beginning beginning) throws IOException {
    return started(beginning, null);
  }

  /**
   * The start of a session.
   *
   * @param from the data of a session that it replaces, whose turns are recorded apart, or null
   */
  private Event.Started started(Beginning beginning, @Nullable CarriedOn from) throws IOException {
    Wish wish = beginning.wish();
    Procedure procedure = beginning.library().main();
    Instrument instrument = wish.instrument() == null ? null : store.instrument(wish.instrument());
    Opening opening = current(beginning);
    // Sessions without a name may be of several instruments.
    Neck neck = instrument == null ? Neck.UNKNOWN : opening.neck();
    Neck.Older older = neck.older();
    return new Event.Started(
        now(),
        procedure.id(),
        procedure.revision(),
        procedure.digest(),
        wish.role(),
        wish.instrument(),
        wish.kind() == null && instrument != null ? instrument.kind() : wish.kind(),
        style(wish, instrument, opening),
        instrument == null ? null : instrument.jointFret(),
        from == null ? opening.turns() : from.started().past(),
        opening.neck().results(),
        instrument == null ? null : OwnMake.of(instrument),
        opening.carried(),
        new OwnFolder(own).file(wish.procedure(), procedure.id()),
        by,
        PastAnswers.of(
            older == null ? List.of() : older.told().known(), neck.told(), beginning.library()),
        wish.lesson(),
        beginning.setsBack() ? opening.neck().worked() : null,
        from == null ? opening.earlier() : from.started().earlier());
  }

  /**
   * As wished; else as the instrument's file has it; else as it was said last of this instrument.
   */
  private static @Nullable Style style(
      Wish wish, @Nullable Instrument instrument, Opening opening) {
    if (wish.style() != null || instrument == null) {
      return wish.style();
    }
    return instrument.style() != null
        ? instrument.style()
        : opening.neck().style(EngineQuestions.STYLE);
  }

  private Opened started(Beginning beginning, @Nullable CarriedOn from, Closing held)
      throws IOException {
    String instrument = beginning.wish().instrument();
    if (from == null) {
      held.keep(store.hold(instrument));
    }
    Library library = beginning.library();
    Event.Started started = started(beginning, from);
    Store.Created created =
        store.create(
            started.procedure(),
            started.revision(),
            started.digest(),
            LocalDate.ofInstant(started.at(), clock.getZone()),
            new Random());
    Engine engine = new Engine(library, new BeliefAdvisor());
    Journal journal = held.keep(created.journal());
    List<Event> events = from == null ? List.of(started) : from.beginning(started);
    LiveBench bench = LiveBench.start(engine, journal::append, created.name(), events, clock);
    beside(bench, events);
    return new Opened(created.name(), bench, held, null);
  }

  private Opened resumed(Beginning beginning, String session, Closing held) throws IOException {
    Journal journal = held.keep(store.open(session));
    Journal.Contents contents = journal.found();
    Event.Started was = (Event.Started) contents.events().get(0);
    held.keep(store.hold(was.instrument()));
    Opening opening = current(beginning);
    List<Event.Past> elsewhere = opening.turnsBeside(was);
    Engine engine = new Engine(beginning.library(), new BeliefAdvisor());
    Event.Resumed again = new Event.Resumed(now(), elsewhere, opening.carried(), by);
    try {
      LiveBench bench =
          LiveBench.resume(engine, journal::append, session, contents.events(), again, clock);
      beside(bench, bench.events());
      return new Opened(session, bench, held, contents.notice());
    } catch (RecordMismatchException e) {
      CarriedOn from = CarriedOn.of(session, contents.events(), elsewhere);
      Beginning anew = beginning.instead(from.kind(), from.style(), session, now());
      Opened opened = started(anew, from, held);
      journal.append(List.of(from.ended(opened.name(), clock.instant())));
      return new Opened(opened.name(), opened.bench(), held, contents.notice());
    }
  }

  /** Adds to what a bench shows how the program is called, who works, and the ticket. */
  private void beside(LiveBench bench, List<Event> events) throws IOException {
    String who = Glances.by(events);
    String instrument = ((Event.Started) events.get(0)).instrument();
    String ticket = instrument == null ? null : store.tickets().get(instrument);
    bench.calledBy(program);
    bench.doneBy(who, ticket);
  }

  /** The procedure that is offered to set back what a lesson turned, or null. */
  public @Nullable String setsBack() throws IOException, UnreadableException {
    for (Results.Offer offer : rules().results().offers()) {
      Library library = library(offer.procedure());
      if (library.any(library.main(), Step::setsBack)) {
        return offer.procedure();
      }
    }
    return null;
  }

  /** What is due or will be, the soonest first, without reading any procedure. */
  public List<Due> dues(Instant now) throws IOException, UnreadableException {
    return Dues.of(store.sessions(), store.instrumentNames(), outline().limits().rechecks(), now);
  }

  /** The unfinished sessions, the most pressing first. */
  public List<Work> unfinished() throws IOException {
    return Work.of(store.sessions(), store.tickets(), clock.instant());
  }

  /**
   * The unfinished sessions of the instrument that one is to begin on, as its records stood then.
   */
  public List<Work> unfinishedBeside(Beginning beginning) throws IOException {
    String instrument = beginning.wish().instrument();
    List<Glance> of =
        Listings.of(Listings.on(instrument, beginning.opening().records().entries()))
            .sessions()
            .stream()
            .filter(Glance::unfinished)
            .toList();
    return of.isEmpty() ? List.of() : Work.of(of, store.tickets(), clock.instant());
  }

  /** Where an unfinished session is, such as "Neck relief, part 5 of 7: Turn". */
  public String place(Work work) throws IOException, UnreadableException {
    String session = work.glance().name();
    String procedure = String.valueOf(work.glance().procedure());
    try {
      return new Engine(library(procedure), new BeliefAdvisor())
          .place(session, store.read(session).events());
    } catch (IOException | UnreadableException | RecordMismatchException changed) {
      return outline().results().title(procedure);
    }
  }

  /** The name of the only unfinished session, for {@code resume} without a name. */
  public String onlyUnfinished() throws IOException {
    List<Work> open = unfinished();
    if (open.isEmpty()) {
      throw new NotUnderstoodException(
          "there is no unfinished session; start one: " + program.typed("start relief"));
    }
    if (open.size() > 1) {
      throw new NotUnderstoodException(
          "there are "
              + open.size()
              + " unfinished sessions; name one: "
              + String.join(", ", open.stream().map(work -> work.glance().name()).toList()));
    }
    return open.get(0).glance().name();
  }
}
