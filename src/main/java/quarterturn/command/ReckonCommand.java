package quarterturn.command;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;
import picocli.CommandLine.Unmatched;
import quarterturn.reckon.Reckon;

/**
 * {@code reckon TOPIC}. All words after it are handed on, {@code --help} too: the topics have a
 * command line of their own, made only when this command runs.
 */
@Command(name = "reckon", description = "Reckons one number of the trade: reckon --help.")
final class ReckonCommand implements Callable<Integer> {
  @Spec private CommandSpec spec = CommandSpec.create();
  @Unmatched private List<String> rest = new ArrayList<>();

  @Override
  public Integer call() {
    return Cli.answering(Reckon.line(spec.commandLine().getOut(), spec.commandLine().getErr()))
        .execute(rest.toArray(String[]::new));
  }
}
