package quarterturn.command;

import java.io.IOException;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.SplittableRandom;
import org.jspecify.annotations.Nullable;
import quarterturn.craft.rod.BeliefAdvisor;
import quarterturn.lesson.Plan;
import quarterturn.lesson.bench.Course;
import quarterturn.procedure.Library;
import quarterturn.procedure.Procedure;
import quarterturn.procedure.Role;
import quarterturn.procedure.Unreadable;
import quarterturn.rehearsal.InstrumentTraits;
import quarterturn.rehearsal.NamedNeck;
import quarterturn.rehearsal.PracticeBench;
import quarterturn.rehearsal.SimulatedInstrument;
import quarterturn.rehearsal.SimulatedNeck;
import quarterturn.session.Event;
import quarterturn.session.engine.Engine;
import quarterturn.session.engine.LiveBench;
import quarterturn.session.journal.Journal;
import quarterturn.session.store.Store;
import quarterturn.session.store.Trait;
import quarterturn.session.store.Traits;

/**
 * A bench's sessions, in a data folder of its own. A simulated instrument is built again from its
 * seed, and all that was done to it is done once more, session by session.
 */
final class LessonCourse implements Course {
  private static final String GREETING =
      "The neck is a simulated one. Notes tell what you would see and feel; what no note speaks of"
          + " is in order.";

  private final Desk desk;
  private final Plan plan;
  private final Plan.Setup setup;
  private @Nullable SimulatedInstrument simulated;
  private @Nullable PracticeBench last;

  /**
   * @param desk with the bench's own folder
   */
  LessonCourse(Desk desk, Plan plan, Plan.Setup setup) {
    this.desk = desk;
    this.plan = plan;
    this.setup = setup;
  }

  @Override
  public Run open(int n) throws IOException, Unreadable {
    String procedure = plan.procedures().get(n);
    if (!desk.store().instrumentNames().contains(setup.kind())) {
      Instant now = desk.clock().instant();
      desk.store().add(Traits.instrument(setup.kind(), now, Map.of(Trait.KIND, setup.kind())));
    }
    List<Store.Glance> sessions =
        desk.store().sessions().stream()
            .filter(glance -> procedure.equals(glance.procedure()) && glance.started() != null)
            .toList();
    Store.Glance begun = sessions.isEmpty() ? null : sessions.get(0);
    return setup.neck() == null
        ? real(procedure, sessions)
        : simulated(procedure, begun, setup.neck());
  }

  /**
   * On a real instrument.
   *
   * @param sessions of this procedure, the newest first; it stands in the place of the others
   */
  private Run real(String procedure, List<Store.Glance> sessions) throws IOException, Unreadable {
    Store.Glance begun = sessions.isEmpty() ? null : sessions.get(0);
    if (begun != null && begun.ended() != null) {
      Library library = desk.proven(procedure);
      Engine engine = new Engine(library, new BeliefAdvisor());
      List<Event> events = desk.store().read(begun.name()).events();
      LiveBench over = LiveBench.ended(engine, begun.name(), events, desk.clock());
      return new Run(library, replaced(sessions, begun.name()), over, null, () -> {});
    }
    Desk.Opened opened =
        begun == null
            ? desk.start(new Desk.Wish(procedure, setup.kind(), null, null, Role.BEGINNER))
            : desk.resume(begun.name());
    List<Event> replaced = replaced(sessions, opened.name());
    return new Run(desk.library(procedure), replaced, opened.bench(), null, opened::close);
  }

  /** What happened in the sessions in whose place one stands, oldest first. */
  private List<Event> replaced(List<Store.Glance> sessions, String by) throws IOException {
    List<Event> events = new ArrayList<>();
    for (Store.Glance glance : sessions) {
      if (!glance.name().equals(by)) {
        events.addAll(0, desk.store().read(glance.name()).events());
      }
    }
    return events;
  }

  private Run simulated(String procedure, Store.@Nullable Glance begun, NamedNeck neck)
      throws IOException, Unreadable {
    Library library = desk.proven(procedure);
    if (simulated == null) {
      InstrumentTraits traits = neck.on(library.kind(setup.kind()), Practice.USUAL_STYLE);
      SplittableRandom chance = new SplittableRandom(setup.seed());
      SimulatedNeck simulatedNeck = new SimulatedNeck(traits.neck(), chance);
      simulated = new SimulatedInstrument(traits, simulatedNeck, library.kind(setup.kind()));
    }
    Engine engine = new Engine(library, new BeliefAdvisor());
    Held held = new Held();
    try {
      PracticeBench bench =
          begun == null
              ? begin(library, engine, simulated, held)
              : again(library, engine, simulated, begun.name(), held);
      last = bench;
      return new Run(library, List.of(), null, bench, held);
    } catch (IOException | RuntimeException e) {
      held.close();
      throw e;
    }
  }

  private PracticeBench begin(
      Library library, Engine engine, SimulatedInstrument instrument, Held held)
      throws IOException {
    Procedure main = library.main();
    Store store = desk.store();
    Clock clock = desk.clock();
    LocalDate day = LocalDate.ofInstant(clock.instant(), clock.getZone());
    Store.Created created =
        store.create(main.id(), main.revision(), main.digest(), day, new Random());
    Journal journal = held.keep(created.journal());
    Instant at = last == null ? clock.instant().truncatedTo(ChronoUnit.SECONDS) : last.now();
    Event.Started started =
        new Event.Started(
            at,
            main.id(),
            main.revision(),
            main.digest(),
            Role.BEGINNER,
            setup.kind(),
            setup.kind(),
            Practice.USUAL_STYLE,
            null,
            store.pastOf(setup.kind()),
            store.resultsOf(setup.kind()),
            null);
    PracticeBench.Kept kept = new PracticeBench.Kept(created.name(), List.of(), journal::append);
    return PracticeBench.start(library, engine, started, instrument, GREETING, kept);
  }

  private PracticeBench again(
      Library library, Engine engine, SimulatedInstrument instrument, String session, Held held)
      throws IOException {
    Journal journal = held.keep(desk.store().open(session));
    PracticeBench.Kept kept =
        new PracticeBench.Kept(session, journal.found().events(), journal::append);
    return PracticeBench.again(library, engine, instrument, GREETING, kept);
  }
}
