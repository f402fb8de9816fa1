package quarterturn.command;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.ParameterException;
import quarterturn.lesson.Plan;
import quarterturn.procedure.Library;
import quarterturn.procedure.UnreadableException;
import quarterturn.report.lesson.StepTitles;
import quarterturn.session.store.Sessions;

/** {@code lesson}: a teacher's lesson in a folder. */
@Command(
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
final class LessonCommand extends Timed implements Runnable {
  /** What a lesson's sheets call its steps. */
  static StepTitles titles(Plan plan, Sessions sessions) throws IOException, UnreadableException {
    List<Library> libraries = new ArrayList<>();
    for (String procedure : plan.procedures()) {
      libraries.add(sessions.library(procedure));
    }
    return StepTitles.of(libraries);
  }

  @Override
  public void run() {
    throw new ParameterException(
        spec.commandLine(),
        "Say what to do: lesson new, lesson join, lesson desk, lesson sheets or lesson"
            + " forget, and a FOLDER.");
  }
}
