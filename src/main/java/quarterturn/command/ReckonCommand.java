package quarterturn.command;

import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;
import picocli.CommandLine.Unmatched;
import quarterturn.command.place.Where;
import quarterturn.reckon.Reckon;
import quarterturn.session.store.Sessions;

/**
 * {@code reckon TOPIC}. All words after it are handed on, {@code --help} too: the topics have a
 * command line of their own, made only when this command runs.
 */
@Command(
    addMethodSubcommands = false,
    name = "reckon",
    description = "Reckons one number of the trade: reckon --help.")
final class ReckonCommand implements Callable<Integer> {
  @Spec private CommandSpec spec = CommandSpec.create();
  @Mixin private Where where = new Where();
  @Unmatched private List<String> rest = new ArrayList<>();

  @Override
  public Integer call() {
    CommandLine shell = spec.commandLine();
    Sessions sessions = where.sessions(Clock.systemUTC());
    CommandLine topics = Cli.answering(Reckon.line(shell.getOut(), shell.getErr(), sessions));
    Cli.versions(topics, where);
    return topics.execute(rest.toArray(String[]::new));
  }
}
