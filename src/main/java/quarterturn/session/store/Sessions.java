package quarterturn.session.store;

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
import quarterturn.procedure.Procedure;
import quarterturn.procedure.UnreadableException;
import quarterturn.procedure.check.Checker;
import quarterturn.procedure.condition.Role;
import quarterturn.procedure.kind.Style;
import quarterturn.procedure.read.Shelf;
import quarterturn.session.Due;
import quarterturn.session.Event;
import quarterturn.session.Instrument;
import quarterturn.session.OwnMake;
import quarterturn.session.RecordMismatchException;
import quarterturn.session.engine.CarriedOn;
import quarterturn.session.engine.Engine;
import quarterturn.session.engine.LiveBench;
import quarterturn.session.journal.Journal;
import quarterturn.unit.NotUnderstoodException;

/** Opens sessions, from the store, the folder of the user's procedures and the clock. */
public record Sessions(Store store, @Nullable Path own, Clock clock) {
  /** The properties of a session to be started. */
  public record Wish(
      String procedure,
      @Nullable String instrument,
      @Nullable String kind,
      @Nullable Style style,
      Role role) {}

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

  /** {@code procedure}, or the usual procedure's id for null. */
  public String named(@Nullable String procedure) throws IOException, UnreadableException {
    return procedure != null ? procedure : rules().results().usual();
  }

  /** The library with a procedure, which is refused if checking it finds a fault. */
  public Library proven(String procedure) throws IOException, UnreadableException {
    return Checker.proven(new Shelf(own), procedure);
  }

  /**
   * Starts a session; its first event is on disk when this returns.
   *
   * @throws NotUnderstoodException when the kind or the instrument does not exist
   */
  public Opened start(Wish wish) throws IOException, UnreadableException {
    Closing held = new Closing();
    try {
      return started(wish, null, held);
    } catch (IOException | UnreadableException | RuntimeException e) {
      held.close();
      throw e;
    }
  }

  private Opened started(Wish wish, @Nullable CarriedOn from, Closing held)
      throws IOException, UnreadableException {
    Library library = proven(wish.procedure());
    Procedure procedure = library.main();
    Instrument instrument = wish.instrument() == null ? null : store.instrument(wish.instrument());
    String kind = wish.kind() != null ? wish.kind() : instrument == null ? null : instrument.kind();
    if (kind != null) {
      library.kind(kind);
    }
    if (instrument != null && from == null) {
      held.keep(store.hold(instrument.name()));
    }
    Style style =
        wish.style() != null ? wish.style() : instrument == null ? null : instrument.style();
    Integer joint = instrument == null ? null : instrument.jointFret();
    List<Event.Past> past =
        from != null
            ? from.started().past()
            : instrument == null ? List.of() : store.pastOf(instrument.name());
    List<Event.Before> before =
        instrument != null
            ? store.resultsOf(instrument.name())
            : from == null ? List.of() : from.before();
    Instant now = clock.instant().truncatedTo(ChronoUnit.SECONDS);
    Event.Started started =
        new Event.Started(
            now,
            procedure.id(),
            procedure.revision(),
            procedure.digest(),
            wish.role(),
            instrument == null ? null : instrument.name(),
            kind,
            style,
            joint,
            past,
            before,
            instrument == null ? null : OwnMake.of(instrument));
    Store.Created created =
        store.create(
            procedure.id(),
            procedure.revision(),
            procedure.digest(),
            LocalDate.ofInstant(now, clock.getZone()),
            new Random());
    Engine engine = new Engine(library, new BeliefAdvisor());
    Journal journal = held.keep(created.journal());
    List<Event> beginning = from == null ? List.of(started) : from.beginning(started);
    LiveBench bench = LiveBench.start(engine, journal::append, created.name(), beginning, clock);
    return new Opened(created.name(), bench, held, null);
  }

  /**
   * Resumes a session. One whose record no longer fits its procedure is ended, and a new one
   * replaces it.
   */
  public Opened resume(String session) throws IOException, UnreadableException {
    Closing held = new Closing();
    try {
      return resumed(session, held);
    } catch (IOException | UnreadableException | RuntimeException e) {
      held.close();
      throw e;
    }
  }

  private Opened resumed(String session, Closing held) throws IOException, UnreadableException {
    Journal journal = held.keep(store.open(session));
    Journal.Contents contents = journal.found();
    if (contents.header() == null || contents.events().isEmpty()) {
      throw new IOException("session " + session + " holds nothing yet; start a new one");
    }
    Library library = proven(contents.header().procedure());
    Engine engine = new Engine(library, new BeliefAdvisor());
    List<Event.Past> elsewhere = CarriedOn.elsewhere(contents.events());
    if (contents.events().get(0) instanceof Event.Started s && s.instrument() != null) {
      held.keep(store.hold(s.instrument()));
      elsewhere = store.elsewhere(s.instrument(), session, s.past());
    }
    try {
      LiveBench bench =
          LiveBench.resume(engine, journal::append, session, contents.events(), elsewhere, clock);
      return new Opened(session, bench, held, contents.notice());
    } catch (RecordMismatchException e) {
      CarriedOn from =
          CarriedOn.of(session, contents.events(), elsewhere, library.limits().stopFeels());
      Event.Started was = from.started();
      Wish wish =
          new Wish(was.procedure(), was.instrument(), from.kind(), from.style(), was.role());
      Opened anew = started(wish, from, held);
      journal.append(List.of(from.ended(anew.name(), clock.instant())));
      return new Opened(anew.name(), anew.bench(), held, contents.notice());
    }
  }

  /** What is due or will be, the soonest first, without reading any procedure. */
  public List<Due> dues(Instant now) throws IOException, UnreadableException {
    return Dues.of(store.sessions(), store.instrumentNames(), rules().limits().rechecks(), now);
  }

  /** The name of the only unfinished session, for {@code resume} without a name. */
  public String onlyUnfinished() throws IOException {
    List<Store.Glance> open = unfinished();
    if (open.isEmpty()) {
      throw new NotUnderstoodException(
          "there is no unfinished session; start one: quarterturn start relief");
    }
    if (open.size() > 1) {
      throw new NotUnderstoodException(
          "there are "
              + open.size()
              + " unfinished sessions; name one: "
              + String.join(", ", open.stream().map(Store.Glance::name).toList()));
    }
    return open.get(0).name();
  }

  /** Sessions that have not ended, the newest first. */
  List<Store.Glance> unfinished() throws IOException {
    return store.sessions().stream().filter(Store.Glance::unfinished).toList();
  }
}
