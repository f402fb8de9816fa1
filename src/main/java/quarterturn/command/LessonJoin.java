package quarterturn.command;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import org.jline.terminal.Terminal;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import quarterturn.lesson.BenchLesson;
import quarterturn.lesson.LessonEvent;
import quarterturn.lesson.Plan;
import quarterturn.lesson.PlanFile;
import quarterturn.lesson.Students;
import quarterturn.lesson.WriterFile;
import quarterturn.lesson.WriterLog;
import quarterturn.lesson.bench.BenchName;
import quarterturn.lesson.bench.LessonBench;
import quarterturn.lesson.bench.LessonSession;
import quarterturn.lesson.bench.StoredSessions;
import quarterturn.line.DialogueLines;
import quarterturn.line.LessonLine;
import quarterturn.line.Typing;
import quarterturn.procedure.UnreadableException;
import quarterturn.report.Dates;
import quarterturn.screen.LessonFace;
import quarterturn.screen.terminal.SystemTerminal;
import quarterturn.script.ScriptFace;
import quarterturn.session.ExitStatus;
import quarterturn.session.Names;
import quarterturn.session.RefusedException;
import quarterturn.session.store.Sessions;
import quarterturn.session.store.Store;
import quarterturn.unit.NotUnderstoodException;

/** {@code lesson join FOLDER}: a bench in a lesson, for the first time or once more. */
@Command(
    name = "join",
    description = {
      "Joins a lesson at a bench: quarterturn lesson join first-turn --bench left --as Ana,Ben",
      "The same again after a break goes on where the bench was. Each bench has its own name."
    })
final class LessonJoin extends Placed {
  @Parameters(paramLabel = "FOLDER", description = "The lesson's folder.")
  private Path folder = Path.of("");

  @Option(
      names = "--bench",
      paramLabel = "NAME",
      description = "This bench's own name; it is asked for where it is not given.")
  private @Nullable String bench;

  @Option(
      names = "--as",
      paramLabel = "NAMES",
      description = "Who is at it, by the names they choose, with commas between.")
  private @Nullable String students;

  @Mixin private final Looks looks = new Looks();

  @Override
  public Integer call() throws IOException, UnreadableException, InterruptedException {
    Faces faces = looks.faces(clock.getZone());
    String name = bench;
    boolean script = faces.kind() == Faces.Kind.SCRIPT;
    if (script && name == null) {
      throw new NotUnderstoodException("with --lines the bench's name is given: --bench NAME");
    }
    Plan plan = PlanFile.in(folder);
    List<String> named = students == null ? List.of() : Students.of(students);
    if (script && name != null) {
      try (LessonSession session = open(plan, Names.check("a bench", name), named, welcome -> {})) {
        return new ScriptFace(System.in, System.out).lesson(session);
      }
    }
    if (name == null || faces.kind() == Faces.Kind.TYPED) {
      try (Typing typing = faces.typing()) {
        if (name == null) {
          BenchName dialogue = new BenchName(plan);
          DialogueLines.End end = DialogueLines.run(dialogue, typing.source(), typing.out());
          if (end == DialogueLines.End.INTERRUPTED) {
            return ExitStatus.INTERRUPTED;
          }
          name = dialogue.name();
        }
        if (name == null) {
          return 0;
        }
        if (faces.kind() == Faces.Kind.TYPED) {
          return typed(plan, Names.check("a bench", name), named, typing);
        }
      }
    }
    try (Terminal terminal = SystemTerminal.open();
        LessonSession session = open(plan, Names.check("a bench", name), named, welcome -> {})) {
      return LessonFace.run(
          terminal, session, again(name), faces.settings(terminal), clock.getZone());
    }
  }

  private int typed(Plan plan, String name, List<String> named, Typing typing)
      throws IOException, UnreadableException {
    Consumer<BenchLesson> welcome =
        bench -> LessonLine.greet(BenchName.welcome(plan, name, bench), typing);
    try (LessonSession session = open(plan, name, named, welcome)) {
      Dates dates = new Dates(clock.getZone());
      return LessonLine.run(session, again(name), typing.source(), typing.out(), dates);
    }
  }

  private String again(String name) {
    return "quarterturn lesson join " + folder + " --bench " + name;
  }

  private LessonSession open(
      Plan plan, String name, List<String> named, Consumer<BenchLesson> welcome)
      throws IOException, UnreadableException {
    Plan.Setup setup = plan.forBench(name);
    if (setup == null) {
      throw new NotUnderstoodException(
          "the plan has no instrument for a bench called "
              + name
              + "; choose from "
              + String.join(", ", BenchName.benches(plan)));
    }
    WriterFile file = WriterFile.of(folder, plan.lesson(), name, WriterLog.Part.BENCH);
    LessonBench lesson = LessonBench.at(file, plan.level());
    try {
      welcome.accept(lesson.lesson());
      come(lesson, name, named);
      Store store = Store.at(folder.resolve(file.writer()));
      Sessions sessions = new Sessions(store, sessions().own(), clock);
      return new LessonSession(
          lesson, plan, folder, clock, new StoredSessions(sessions, plan, setup));
    } catch (IOException | UnreadableException | RuntimeException e) {
      lesson.close();
      throw e;
    }
  }

  private void come(LessonBench lesson, String name, List<String> named) throws IOException {
    try {
      lesson.record(new LessonEvent.Joined(clock.instant(), name));
      for (String student : named) {
        if (!lesson.lesson().students().contains(student)) {
          lesson.record(new LessonEvent.Came(clock.instant(), student));
        }
      }
    } catch (RefusedException e) {
      throw new IOException(e.getMessage(), e);
    }
  }
}
