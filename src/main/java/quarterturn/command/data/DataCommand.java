package quarterturn.command.data;

import picocli.CommandLine.Command;
import picocli.CommandLine.ParameterException;
import quarterturn.command.place.Timed;

/** {@code data}: the data folder as a whole. */
@Command(
    addMethodSubcommands = false,
    name = "data",
    description = "Where your data lies, whether all of it is sound, and one file of it to keep.",
    synopsisSubcommandLabel = "COMMAND",
    subcommands = {DataWhere.class, DataCheck.class, DataPack.class, DataUnpack.class})
public final class DataCommand extends Timed implements Runnable {
  /** Exit status where something was found, or left out, or kept as it is. */
  static final int FOUND = 1;

  @Override
  public void run() {
    throw new ParameterException(
        spec.commandLine(),
        "Say what to do: data where, data check, data pack FILE or data unpack FILE.");
  }
}
