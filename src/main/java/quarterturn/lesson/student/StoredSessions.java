package quarterturn.lesson.student;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
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
import quarterturn.procedure.Library;
import quarterturn.procedure.Procedure;
import quarterturn.procedure.UnreadableException;
import quarterturn.procedure.condition.Role;
import quarterturn.rehearsal.Practice;
import quarterturn.rehearsal.PracticeBench;
import quarterturn.rehearsal.simulated.InstrumentTraits;
import quarterturn.rehearsal.simulated.NamedNeck;
import quarterturn.rehearsal.simulated.SimulatedInstrument;
import quarterturn.rehearsal.simulated.SimulatedNeck;
import quarterturn.session.Event;
import quarterturn.session.engine.Engine;
import quarterturn.session.engine.LiveBench;
import quarterturn.session.journal.Journal;
import quarterturn.session.listing.Glance;
import quarterturn.session.store.Closing;
import quarterturn.session.store.FormField;
import quarterturn.session.store.FormFields;
import quarterturn.session.store.Sessions;
import quarterturn.session.store.Store;

/**
 * A bench's sessions, in a data folder of its own. A simulated instrument is built again from its
 * seed, and all that was done to it is done once more, session by session.
 */
public final class StoredSessions implements BenchSessions {
  private static final String GREETING =
      "The neck is a simulated one. Notes tell what you would see and feel; what no note speaks of"
          + " is in order.";

  private final Sessions sessions;
  private final Plan plan;
  private final Plan.Setup setup;
  private final boolean untold;
  private @Nullable SimulatedInstrument simulated;
  private @Nullable PracticeBench last;

  /**
   * @param sessions with the bench's own folder
   */
  public StoredSessions(Sessions sessions, Plan plan, Plan.Setup setup) {
    this(sessions, plan, setup, true);
  }

  /**
   * @param untold whether records that don't say of which lesson they are can be of this one
   */
  public StoredSessions(Sessions sessions, Plan plan, Plan.Setup setup, boolean untold) {
    this.sessions = sessions;
    this.plan = plan;
    this.setup = setup;
    this.untold = untold;
  }

  /**
   * The folder of a bench's records. A real neck's are one for all lessons at its bench, since its
   * turns count on; those of a simulated one are of its lesson alone.
   *
   * @param writer the bench's id in this lesson
   * @param name as it is called
   */
  public static Path folder(Path lesson, Plan plan, String writer, String name) {
    Path own = lesson.resolve(writer);
    return plan.real(name) && !Files.exists(own) ? lesson.resolve(name) : own;
  }

  @Override
  public Run open(int n) throws IOException, UnreadableException {
    String procedure = plan.procedures().get(n);
    if (!sessions.store().instrumentNames().contains(setup.kind())) {
      Instant now = sessions.clock().instant();
      sessions
          .store()
          .add(FormFields.instrument(setup.kind(), now, Map.of(FormField.KIND, setup.kind())));
    }
    List<Glance> glances =
        sessions.store().sessions().stream()
            .filter(glance -> procedure.equals(glance.procedure()) && glance.started() != null)
            .toList();
    if (setup.neck() == null) {
      glances = ofLesson(glances);
    }
    Glance begun = glances.isEmpty() ? null : glances.get(0);
    return setup.neck() == null
        ? real(procedure, glances, begun)
        : simulated(procedure, begun, setup.neck());
  }

  /** Those of this lesson; records of earlier versions do not say of which they are. */
  private List<Glance> ofLesson(List<Glance> glances) throws IOException {
    List<Glance> out = new ArrayList<>();
    for (Glance glance : glances) {
      Event first = sessions.store().read(glance.name()).events().get(0);
      String lesson = first instanceof Event.Started started ? started.lesson() : null;
      if (lesson == null ? untold : lesson.equals(plan.lesson())) {
        out.add(glance);
      }
    }
    return out;
  }

  /**
   * Opens the session of a procedure on a real instrument.
   *
   * @param glances of this procedure, the newest first; it stands in the place of the others
   * @param begun the newest of them, or null
   */
  private Run real(String procedure, List<Glance> glances, @Nullable Glance begun)
      throws IOException, UnreadableException {
    if (begun != null && begun.ended() != null) {
      Library library = sessions.proven(procedure);
      Engine engine = new Engine(library, new BeliefAdvisor());
      List<Event> events = sessions.store().read(begun.name()).events();
      LiveBench over = LiveBench.ended(engine, begun.name(), events, sessions.clock());
      return new Run(library, replaced(glances, begun.name()), over, null, () -> {});
    }
    Sessions.Opened opened =
        begun == null
            ? sessions.start(
                new Sessions.Wish(
                    procedure, setup.kind(), null, null, Role.BEGINNER, plan.lesson()))
            : sessions.resume(begun.name());
    List<Event> replaced = replaced(glances, opened.name());
    return new Run(sessions.library(procedure), replaced, opened.bench(), null, opened::close);
  }

  /** The events of the sessions that session {@code by} replaces, oldest first. */
  private List<Event> replaced(List<Glance> glances, String by) throws IOException {
    List<Event> events = new ArrayList<>();
    for (Glance glance : glances) {
      if (!glance.name().equals(by)) {
        events.addAll(0, sessions.store().read(glance.name()).events());
      }
    }
    return events;
  }

  private Run simulated(String procedure, @Nullable Glance begun, NamedNeck neck)
      throws IOException, UnreadableException {
    Library library = sessions.proven(procedure);
    if (simulated == null) {
      InstrumentTraits traits = neck.on(library.kind(setup.kind()), Practice.USUAL_STYLE);
      SplittableRandom chance = new SplittableRandom(setup.seed());
      SimulatedNeck simulatedNeck = new SimulatedNeck(traits.neck(), chance);
      simulated = new SimulatedInstrument(traits, simulatedNeck, library.kind(setup.kind()));
    }
    Engine engine = new Engine(library, new BeliefAdvisor());
    Closing held = new Closing();
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
      Library library, Engine engine, SimulatedInstrument instrument, Closing held)
      throws IOException {
    Procedure main = library.main();
    Store store = sessions.store();
    Clock clock = sessions.clock();
    Sessions.Wish wish =
        new Sessions.Wish(main.id(), setup.kind(), null, Practice.USUAL_STYLE, Role.BEGINNER);
    Event.Started before = sessions.started(sessions.beginning(wish, library));
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
            before.past(),
            before.before(),
            null,
            before.carried(),
            null,
            null,
            List.of(),
            null,
            null,
            before.earlier());
    PracticeBench.Kept kept = new PracticeBench.Kept(created.name(), List.of(), journal::append);
    return PracticeBench.start(library, engine, started, instrument, GREETING, kept);
  }

  private PracticeBench again(
      Library library, Engine engine, SimulatedInstrument instrument, String session, Closing held)
      throws IOException {
    Journal journal = held.keep(sessions.store().open(session));
    PracticeBench.Kept kept =
        new PracticeBench.Kept(session, journal.found().events(), journal::append);
    return PracticeBench.again(library, engine, instrument, GREETING, kept);
  }
}
