package quarterturn.reckon;

import java.io.IOException;
import java.io.PrintWriter;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import quarterturn.procedure.UnreadableException;

/** A topic of {@code reckon}, whose fields are the options of its command. */
@Command(
    addMethodSubcommands = false,
    mixinStandardHelpOptions = true,
    sortOptions = false,
    usageHelpAutoWidth = true)
abstract class Topic implements Callable<Integer> {
  @Option(names = "--json", description = "Print one JSON object instead.")
  private boolean json;

  @Spec private CommandSpec spec = CommandSpec.create();

  /** The result for the options that were given. */
  abstract Reckoned reckon() throws IOException, UnreadableException;

  @Override
  public Integer call() throws IOException, UnreadableException {
    Reckoned reckoned = reckon();
    PrintWriter out = spec.commandLine().getOut();
    if (json) {
      out.println(reckoned.json());
    } else {
      reckoned.lines().forEach(out::println);
    }
    out.flush();
    return 0;
  }
}
