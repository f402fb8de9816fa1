package quarterturn.command;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
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
    Welcome welcome = bench -> LessonLine.greet(BenchName.welcome(plan, name, bench), typing);
    try (LessonSession session = open(plan, name, named, welcome)) {
      Dates dates = new Dates(clock.getZone());
      return LessonLine.run(session, again(name), typing.source(), typing.out(), dates);
    }
  }

  private String again(String name) {
    return "quarterturn lesson join " + folder + " --bench " + name;
  }

  /** Greets those at a bench. */
  private interface Welcome {
    void to(BenchLesson bench);
  }

  private LessonSession open(Plan plan, String name, List<String> named, Welcome welcome)
      throws IOException, UnreadableException {
    Plan.Setup setup = plan.forBench(name);
    if (setup == null) {
      throw new NotUnderstoodException(
          "the plan has no instrument for a bench called "
              + name
              + "; choose from "
              + String.join(", ", BenchName.benches(plan)));
    }
    WriterFile file = file(plan, name);
    LessonBench lesson = LessonBench.at(file, writer(file), plan.level());
    try {
      welcome.to(lesson.lesson());
      come(lesson, name, named);
      Path own = folder.resolve(writer(file));
      Store store = Store.at(own);
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

  private static String writer(WriterFile file) {
    WriterLog.Header header = file.found().header();
    if (header == null) {
      throw new IllegalStateException("an open file has a header");
    }
    return header.writer();
  }

  /** The bench's file in this lesson; in a folder's later lessons it has a number behind it. */
  private WriterFile file(Plan plan, String name) throws IOException {
    List<String> tried = new ArrayList<>();
    for (int n = 1; n <= 99; n++) {
      String writer = n == 1 ? name : name + "-" + n;
      tried.add(writer);
      if (!Files.exists(folder.resolve(writer + ".jsonl"))) {
        return WriterFile.create(
            folder, new WriterLog.Header(plan.lesson(), writer, WriterLog.Part.BENCH));
      }
      WriterFile file = WriterFile.open(folder, writer);
      WriterLog.Header header = file.found().header();
      if (header != null && header.lesson().equals(plan.lesson())) {
        if (header.role() == WriterLog.Part.BENCH) {
          return file;
        }
        file.close();
        throw new NotUnderstoodException(name + " is the teacher's board; choose another name");
      }
      file.close();
    }
    throw new NotUnderstoodException(
        "the names " + tried.get(0) + " to " + tried.get(98) + " are taken");
  }
}
