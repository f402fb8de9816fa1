package quarterturn.command.lesson;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import quarterturn.command.face.Face;
import quarterturn.command.face.Faces;
import quarterturn.command.face.Looks;
import quarterturn.command.place.Place;
import quarterturn.command.place.Placed;
import quarterturn.lesson.LessonEvent;
import quarterturn.lesson.Plan;
import quarterturn.lesson.Students;
import quarterturn.lesson.store.PlanFile;
import quarterturn.lesson.store.WriterFile;
import quarterturn.lesson.student.BenchName;
import quarterturn.lesson.student.LessonBench;
import quarterturn.lesson.student.LessonSession;
import quarterturn.lesson.student.StoredSessions;
import quarterturn.procedure.UnreadableException;
import quarterturn.session.Dialogue;
import quarterturn.session.ExitStatus;
import quarterturn.session.Program;
import quarterturn.session.RefusedException;
import quarterturn.session.journal.DisplacedException;
import quarterturn.session.store.Sessions;
import quarterturn.session.store.Settings;
import quarterturn.session.store.Store;
import quarterturn.unit.NotUnderstoodException;

/** {@code lesson join FOLDER}: a bench in a lesson, for the first time or once more. */
@Command(
    addMethodSubcommands = false,
    name = "join",
    description = {
      "Joins a lesson at a bench: ${ROOT-COMMAND-NAME} lesson join first-turn --bench left --as Ana,Ben",
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
    if (faces.kind() == Faces.Kind.SCRIPT && bench == null) {
      throw new NotUnderstoodException("with --lines the bench's name is given: --bench NAME");
    }
    Place.isThere("FOLDER", folder, "name the lesson's folder");
    Plan plan = PlanFile.in(folder);
    List<String> named = students == null ? List.of() : Students.of(students);
    boolean screen = faces.kind() == Faces.Kind.SCREEN;
    try (BenchName name = new BenchName(plan, folder, named, bench)) {
      try (Face face =
          screen && bench == null
              ? Faces.asking(false, faces.zone())
              : open(faces, Settings.Key.OWN)) {
        Dialogue.End end = face.ask(name);
        if (end != Dialogue.End.ANSWERED) {
          // Where a name was given, nobody asked for one.
          boolean failed = end == Dialogue.End.CUT_SHORT && bench != null;
          return failed ? ExitStatus.FAILED : end.status();
        }
        if (!screen || bench != null) {
          return played(face, plan, name, named);
        }
      }
      try (Face face = open(faces, Settings.Key.OWN)) {
        return played(face, plan, name, named);
      }
    }
  }

  private int played(Face face, Plan plan, BenchName called, List<String> named)
      throws IOException, UnreadableException, InterruptedException {
    WriterFile file = called.file();
    if (file == null) {
      return ExitStatus.DONE;
    }
    String name = called.name();
    try (LessonBench lesson = LessonBench.at(file, plan.level())) {
      String welcome = BenchName.welcome(plan, name, lesson.lesson());
      come(lesson, plan, name, named);
      Path data = StoredSessions.folder(folder, plan, file.writer(), name);
      Sessions sessions = new Sessions(Store.at(data), sessions().own(), clock);
      boolean own = data.endsWith(file.writer());
      StoredSessions stored = new StoredSessions(sessions, plan, BenchName.setup(plan, name), own);
      try (LessonSession session = new LessonSession(lesson, plan, folder, clock, stored)) {
        return face.lesson(session, again(name), welcome);
      }
    } catch (DisplacedException e) {
      throw e.goOn("Go on with: " + again(name));
    }
  }

  private String again(String name) {
    return where
        .program()
        .typed("lesson join " + Program.word(folder.toString()) + " --bench " + name);
  }

  private void come(LessonBench lesson, Plan plan, String name, List<String> named)
      throws IOException {
    try {
      lesson.record(new LessonEvent.Joined(clock.instant(), name));
      for (String student : named) {
        if (!lesson.lesson().students().contains(student)) {
          lesson.record(plan.came(clock.instant(), student));
        }
      }
    } catch (RefusedException e) {
      throw new IOException(e.getMessage(), e);
    }
  }
}
