package quarterturn.command.face;

import java.time.ZoneId;
import java.util.Map;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import quarterturn.platform.StandardStreams;

/** The options that choose a face and its colours. */
@Command(addMethodSubcommands = false)
public final class Looks {
  /** When to colour. */
  enum Colour {
    auto,
    always,
    never
  }

  static final class Chosen {
    @Option(names = "--plain", description = "Plain typed lines, no cursor control.")
    boolean plain;

    @Option(names = "--lines", description = "One JSON object a line each way, for programs.")
    boolean lines;
  }

  @ArgGroup(exclusive = true)
  private Chosen chosen = new Chosen();

  @Option(
      names = "--color",
      paramLabel = "WHEN",
      description =
          "auto, always or never (auto minds NO_COLOR). Colour never carries meaning alone.")
  private Colour color = Colour.auto;

  /**
   * The face that fits what was asked and where the program runs.
   *
   * @param zone by which times are shown
   */
  public Faces faces(ZoneId zone) {
    Map<String, String> env = System.getenv();
    if (chosen != null && chosen.lines) {
      return new Faces(Faces.Kind.SCRIPT, false, zone);
    }
    boolean dumb = "dumb".equals(env.get("TERM"));
    boolean terminal = StandardStreams.areATerminal();
    if ((chosen != null && chosen.plain) || dumb || !terminal) {
      return new Faces(Faces.Kind.TYPED, false, zone);
    }
    String noColour = env.get("NO_COLOR");
    boolean plain = noColour != null && !noColour.isEmpty();
    boolean coloured = color == Colour.always || (color == Colour.auto && !plain);
    return new Faces(Faces.Kind.SCREEN, coloured, zone);
  }
}
