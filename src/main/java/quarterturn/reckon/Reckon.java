package quarterturn.reckon;

import java.io.PrintWriter;
import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import quarterturn.session.store.Sessions;

/** All topics, behind {@code reckon}. */
@Command(
    addMethodSubcommands = false,
    name = "quarterturn reckon",
    mixinStandardHelpOptions = true,
    description = {
      "Reckons one number of the trade, says what it rests on, and changes nothing.",
      "Lengths may be typed as 34in, 863.6mm, .012in, 12 thou or 1/64in."
    },
    footer = {
      "",
      "${ROOT-COMMAND-NAME} reckon TOPIC --help explains a topic. With --json it prints one JSON",
      "object; doubt stands first in it where no instrument can have such a number.",
      "Exit status: 0, or 2 for wrong usage."
    },
    synopsisSubcommandLabel = "TOPIC",
    commandListHeading = "%nTopics:%n",
    subcommands = {
      FretsTopic.class,
      PitchTopic.class,
      TensionTopic.class,
      PullTopic.class,
      NeckTopic.class,
      ReliefAsTopic.class,
      ContactTopic.class,
      ReliefForTopic.class,
      IntonationTopic.class,
      SharpeningTopic.class,
      StiffnessTopic.class,
      SaddleTopic.class,
      ArcTopic.class,
      ShimTopic.class,
      MoistureTopic.class,
      KeyTopic.class,
      ThreadTopic.class,
      GaugeTopic.class
    })
public final class Reckon implements Runnable {
  @Spec private CommandSpec spec = CommandSpec.create();

  private Reckon() {}

  /**
   * The command line of all topics, which takes the arguments after {@code reckon}. It is built
   * apart from the program's own, so that sessions start faster.
   *
   * @param sessions the user's folders, where instruments and kinds are found by name
   */
  public static CommandLine line(PrintWriter out, PrintWriter err, Sessions sessions) {
    CommandLine line = new CommandLine(new Reckon());
    Converters.teach(line, sessions);
    line.setOut(out);
    line.setErr(err);
    return line;
  }

  /** The names of all topics. */
  public static List<String> topics() {
    return List.copyOf(new CommandLine(new Reckon()).getSubcommands().keySet());
  }

  @Override
  public void run() {
    throw new ParameterException(
        spec.commandLine(),
        "Say what to reckon, one of: " + String.join(", ", spec.subcommands().keySet()));
  }
}
