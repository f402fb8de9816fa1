package quarterturn.command;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** {@code lesson}: a teacher's lesson in a folder. */
@Command(
    name = "lesson",
    mixinStandardHelpOptions = true,
    description = "A teacher's lesson: benches that predict before they read, and a board.",
    synopsisSubcommandLabel = "COMMAND",
    subcommands = {LessonNew.class, LessonJoin.class, LessonBoard.class, LessonSheetsCommand.class})
final class LessonCommand implements Runnable {
  @Spec private CommandSpec spec = CommandSpec.create();

  @Override
  public void run() {
    throw new ParameterException(
        spec.commandLine(),
        "Say what to do: lesson new, lesson join, lesson board or lesson sheets, and a FOLDER.");
  }
}
