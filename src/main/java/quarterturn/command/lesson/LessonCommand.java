package quarterturn.command.lesson;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.ParameterException;
import quarterturn.command.place.Timed;
import quarterturn.lesson.Plan;
import quarterturn.lesson.store.WriterLog;
import quarterturn.lesson.teacher.TurnedNeck;
import quarterturn.procedure.Library;
import quarterturn.procedure.Limits;
import quarterturn.procedure.UnreadableException;
import quarterturn.report.lesson.StepTitles;
import quarterturn.session.store.Sessions;

/** {@code lesson}: a teacher's lesson in a folder. */
@Command(
    addMethodSubcommands = false,
    name = "lesson",
    description = "A teacher's lesson: benches that predict before they read, and a desk.",
    synopsisSubcommandLabel = "COMMAND",
    subcommands = {
      LessonNew.class,
      LessonJoin.class,
      LessonDesk.class,
      LessonSheetsCommand.class,
      LessonForget.class
    })
public final class LessonCommand extends Timed implements Runnable {
  /** What a lesson's sheets call its steps. */
  static StepTitles titles(Plan plan, Sessions sessions) throws IOException, UnreadableException {
    List<Library> libraries = new ArrayList<>();
    for (String procedure : plan.procedures()) {
      libraries.add(sessions.library(procedure));
    }
    return StepTitles.of(libraries);
  }

  /**
   * The real necks of a lesson that stand turned: bench, how the rod stands, what to type; null
   * where it has none.
   */
  static @Nullable List<List<String>> turned(
      Path folder, Plan plan, List<WriterLog> logs, Sessions sessions) throws IOException {
    if (!plan.real()) {
      return null;
    }
    try {
      List<List<String>> out = new ArrayList<>();
      for (TurnedNeck neck : necks(folder, plan, logs, sessions)) {
        out.add(List.of(neck.bench(), neck.words(), typed(neck, sessions)));
      }
      return out;
    } catch (UnreadableException e) {
      throw new IOException(e.getMessage(), e);
    }
  }

  static List<TurnedNeck> necks(Path folder, Plan plan, List<WriterLog> logs, Sessions sessions)
      throws IOException, UnreadableException {
    Limits limits = sessions.rules().limits();
    return TurnedNeck.of(folder, plan, logs, limits, sessions.clock().instant());
  }

  private static String typed(TurnedNeck neck, Sessions sessions)
      throws IOException, UnreadableException {
    String procedure = sessions.setsBack();
    return procedure == null ? "" : neck.typed(procedure);
  }

  @Override
  public void run() {
    throw new ParameterException(
        spec.commandLine(),
        "Say what to do: lesson new, lesson join, lesson desk, lesson sheets or lesson"
            + " forget, and a FOLDER.");
  }
}
