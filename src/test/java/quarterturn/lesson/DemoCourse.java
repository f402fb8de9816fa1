package quarterturn.lesson;

import static java.util.Objects.requireNonNull;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import quarterturn.craft.rod.BeliefAdvisor;
import quarterturn.lesson.store.WriterFile;
import quarterturn.lesson.store.WriterLog;
import quarterturn.lesson.student.BenchSessions;
import quarterturn.lesson.student.LessonBench;
import quarterturn.lesson.student.LessonSession;
import quarterturn.procedure.Library;
import quarterturn.procedure.Procedure;
import quarterturn.procedure.condition.Role;
import quarterturn.procedure.kind.Kind;
import quarterturn.procedure.kind.Style;
import quarterturn.procedure.read.Shelf;
import quarterturn.rehearsal.PracticeBench;
import quarterturn.rehearsal.simulated.InstrumentTraits;
import quarterturn.rehearsal.simulated.NamedNeck;
import quarterturn.rehearsal.simulated.SimulatedInstrument;
import quarterturn.rehearsal.simulated.SimulatedNeck;
import quarterturn.session.Answer;
import quarterturn.session.Event;
import quarterturn.session.engine.Engine;

/** A bench on an invented neck whose sessions are kept nowhere. */
public final class DemoCourse implements BenchSessions {
  private static final Instant T = Instant.parse("2027-03-01T09:00:00Z");
  private static final Map<String, Library> READ = new ConcurrentHashMap<>();

  private final Plan plan;
  private @Nullable PracticeBench practice;

  private DemoCourse(Plan plan) {
    this.plan = plan;
  }

  /** A bench on a neck, without a hold point, and what a truthful person answers there. */
  public record Played(LessonSession session, Supplier<Answer> truth) {}

  /** A bench called left on a neck, in any procedure, without a hold point. */
  public static Played on(NamedNeck neck, String procedure, Path folder, String... students)
      throws Exception {
    DemoCourse course = new DemoCourse(plan(neck, procedure, false, false));
    LessonSession session = course.begun(folder, students);
    return new Played(session, () -> requireNonNull(course.practice).truth());
  }

  private static Plan plan(NamedNeck neck, String procedure, boolean everyTurn, boolean blind) {
    return new Plan(
        "2027-03-01-1-demo",
        "Demo",
        List.of(procedure),
        List.of(new Plan.Setup(null, "bass-34", neck, 7)),
        Level.WORKED,
        everyTurn,
        List.of(),
        blind,
        List.of(),
        Map.of(),
        Questioning.SOME);
  }

  /** A bench called left in a relief check. */
  public static LessonSession session(Path folder, boolean blind, String... students)
      throws Exception {
    return of("relief-check", folder, blind, students);
  }

  /** A bench called left in any procedure. */
  public static LessonSession of(String procedure, Path folder, boolean blind, String... students)
      throws Exception {
    return new DemoCourse(plan(NamedNeck.TOO_MUCH, procedure, true, blind)).begun(folder, students);
  }

  private LessonSession begun(Path folder, String... students) throws Exception {
    WriterLog.Header header = new WriterLog.Header(plan.lesson(), "left", WriterLog.Part.BENCH);
    LessonBench bench = LessonBench.at(WriterFile.create(folder, header), plan.level());
    for (String student : students) {
      bench.record(new LessonEvent.Came(T, student));
    }
    return new LessonSession(bench, plan, folder, Clock.fixed(T, ZoneOffset.UTC), this);
  }

  /** Lets a bench go on, as a teacher would. */
  public static void release(LessonSession session, Path folder) throws Exception {
    Keep keep = session.lesson().keptBy().get(0);
    String lesson = session.plan().lesson();
    try (WriterFile file = WriterFile.of(folder, lesson, "desk", WriterLog.Part.BOARD)) {
      Order order = new Order.Release(keep.ref(), keep.value());
      file.append(List.of(new LessonEvent.Ordered(T, "left", order)));
    }
  }

  @Override
  public Run open(int n) {
    try {
      String name = plan.procedures().get(n);
      Library library = READ.get(name);
      if (library == null) {
        library = new Shelf(null).load(name);
        READ.put(name, library);
      }
      Kind kind = library.kind("bass-34");
      NamedNeck named = requireNonNull(plan.instruments().get(0).neck());
      InstrumentTraits traits = named.on(kind, Style.MEDIUM);
      SimulatedNeck neck = new SimulatedNeck(traits.neck(), new SplittableRandom(7));
      Procedure main = library.main();
      Event.Started started =
          new Event.Started(
              T,
              main.id(),
              main.revision(),
              main.digest(),
              Role.BEGINNER,
              null,
              kind.id(),
              Style.MEDIUM,
              null,
              List.of(),
              List.of(),
              null,
              null);
      PracticeBench bench =
          PracticeBench.start(
              library,
              new Engine(library, new BeliefAdvisor()),
              started,
              new SimulatedInstrument(traits, neck, kind),
              "An invented neck.",
              PracticeBench.Kept.NOWHERE);
      practice = bench;
      return new Run(library, List.of(), null, bench, () -> {});
    } catch (Exception e) {
      throw new IllegalStateException(e);
    }
  }
}
