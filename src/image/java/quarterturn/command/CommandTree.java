package quarterturn.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import picocli.CommandLine;
import picocli.CommandLine.Help;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import quarterturn.platform.UserFolders;
import quarterturn.procedure.UnreadableException;
import quarterturn.procedure.read.Shelf;
import quarterturn.reckon.Reckon;
import quarterturn.session.Program;
import quarterturn.session.store.Sessions;
import quarterturn.session.store.Store;

/**
 * A command of the program as a shell and a manual need it, read from the command line itself.
 *
 * @param path the words that name it, without the program's own: none for the program
 * @param name the last of them
 * @param about what it is for, a sentence or more a line
 * @param synopsis how it is typed
 * @param options what may follow with dashes
 * @param places what may follow without
 * @param commands the commands below it
 * @param footer what its help ends with
 */
public record CommandTree(
    List<String> path,
    String name,
    List<String> about,
    String synopsis,
    List<Word> options,
    List<Word> places,
    List<CommandTree> commands,
    List<String> footer) {
  /** Labels of what is a path of a file or folder. */
  private static final Set<String> PATHS = Set.of("DIR", "FILE", "FOLDER", "FILE|DIR", "PROCEDURE");

  /**
   * An option or a place.
   *
   * @param names those of an option; none for a place
   * @param label of the value it takes; empty where it takes none
   * @param values those that can be listed
   * @param path whether the value may be a path
   */
  public record Word(
      List<String> names, String label, String about, List<String> values, boolean path) {
    public boolean taking() {
      return !label.isEmpty();
    }
  }

  /** Every command of the program. */
  public static CommandTree ofProgram() throws IOException, UnreadableException {
    System.setProperty(Program.NAME + ".launcher", Program.NAME);
    Shelf shelf = new Shelf(null);
    Map<String, List<String>> known =
        Map.of(
            "PROCEDURE",
            shelf.procedures(),
            "KIND",
            shelf.rules().kinds().keySet().stream().sorted().toList());
    Path nowhere = Path.of("/nowhere");
    UserFolders nobody = new UserFolders(Map.of(), "", nowhere.toString());
    Clock clock = Clock.systemUTC();
    CommandLine line = Cli.line(clock, nobody, "--help");
    // Its topics have a line of their own, made when they are asked for.
    PrintWriter out = new PrintWriter(PrintWriter.nullWriter());
    Sessions sessions = new Sessions(Store.at(nowhere), null, null, clock, Program.here());
    CommandLine topics = Cli.answering(Reckon.line(out, out, sessions));
    CommandLine reckon = Objects.requireNonNull(line.getSubcommands().get("reckon"));
    topics.getSubcommands().forEach(reckon::addSubcommand);
    return of(line, List.of(), known);
  }

  private static CommandTree of(
      CommandLine line, List<String> path, Map<String, List<String>> known) {
    CommandSpec spec = line.getCommandSpec();
    Help help = line.getHelp(); // joins the lines of a sentence
    List<CommandTree> commands = new ArrayList<>();
    for (CommandLine below : new LinkedHashSet<>(line.getSubcommands().values())) {
      List<String> longer = new ArrayList<>(path);
      longer.add(below.getCommandName());
      commands.add(of(below, longer, known));
    }
    return new CommandTree(
        path,
        line.getCommandName(),
        List.of(spec.usageMessage().description()),
        help.synopsis(0).strip().replaceAll("\\s+", " "),
        spec.options().stream()
            .map(option -> word(List.of(option.names()), option, option.arity().max() > 0, known))
            .toList(),
        spec.positionalParameters().stream()
            .map(place -> word(List.of(), place, true, known))
            .toList(),
        commands,
        List.of(spec.usageMessage().footer()));
  }

  private static Word word(
      List<String> names, ArgSpec arg, boolean taking, Map<String, List<String>> known) {
    String label = taking ? arg.paramLabel() : "";
    List<String> values = new ArrayList<>(known.getOrDefault(label, List.of()));
    if (taking && arg.completionCandidates() != null) {
      arg.completionCandidates().forEach(value -> values.add(value.toLowerCase(Locale.ROOT)));
    }
    return new Word(
        names, label, String.join(" ", arg.description()), values, PATHS.contains(label));
  }

  /** The sentence that tells what it is for. */
  public String brief() {
    return about.isEmpty() ? "" : brief(String.join(" ", about));
  }

  /** The first sentence of a text, without its end. */
  public static String brief(String text) {
    return text.replaceAll("([a-z0-9)])[.:;,] .*", "$1").replaceAll("\\.$", "");
  }

  /** This command and all below it. */
  public List<CommandTree> all() {
    List<CommandTree> all = new ArrayList<>(List.of(this));
    commands.forEach(below -> all.addAll(below.all()));
    return all;
  }
}
