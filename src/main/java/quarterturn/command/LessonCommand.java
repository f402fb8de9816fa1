package quarterturn.command;

import picocli.CommandLine.Command;
import picocli.CommandLine.ParameterException;

/** {@code lesson}: a teacher's lesson in a folder. */
@Command(
    name = "lesson",
    description = "A teacher's lesson: benches that predict before they read, and a board.",
    synopsisSubcommandLabel = "COMMAND",
    subcommands = {LessonNew.class, LessonJoin.class, LessonBoard.class, LessonSheetsCommand.class})
final class LessonCommand extends Timed implements Runnable {
  @Override
  public void run() {
    throw new ParameterException(
        spec.commandLine(),
        "Say what to do: lesson new, lesson join, lesson board or lesson sheets, and a FOLDER.");
  }
}
