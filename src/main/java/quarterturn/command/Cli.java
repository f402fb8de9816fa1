package quarterturn.command;

import java.io.IOException;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.UsageMessageSpec;
import picocli.CommandLine.Option;
import quarterturn.command.data.DataCommand;
import quarterturn.command.face.Looks;
import quarterturn.command.lesson.LessonCommand;
import quarterturn.command.place.Letters;
import quarterturn.command.place.Output;
import quarterturn.command.place.Placed;
import quarterturn.command.place.Timed;
import quarterturn.command.place.Where;
import quarterturn.platform.Encodings;
import quarterturn.platform.UserFolders;
import quarterturn.procedure.UnreadableException;
import quarterturn.procedure.condition.Role;
import quarterturn.session.Program;
import quarterturn.unit.Digits;
import quarterturn.unit.NotUnderstoodException;

/** The command line: what can be typed, and the exit status. */
@Command(
    addMethodSubcommands = false,
    name = "quarterturn",
    description = {
      "Carries you through setting up a fretted string instrument, one safe turn at a time.",
      "Without a command it opens the home view: unfinished sessions, and what is due.",
      "",
      "It does not replace a qualified repairer. Local rules come first."
    },
    footer = {
      "",
      "Exit status: 0 done or left in order, 1 handed over to a repairer,",
      "2 wrong usage, or a file that can't be read or written, 130 stopped by Ctrl-C,",
      "141 what was printed has no reader any more.",
      "Of check: 0 nothing found, 1 findings, 2 a file that can't be read."
    },
    synopsisSubcommandLabel = "[COMMAND]")
public final class Cli extends Placed {
  private static final List<String> COMMANDS =
      List.of(
          "start",
          "resume",
          "due",
          "log",
          "instrument",
          "reckon",
          "advise",
          "rehearse",
          "check",
          "lesson",
          "data",
          "settings");

  @Mixin private final Looks looks = new Looks();

  @Option(
      names = "--role",
      paramLabel = "ROLE",
      description = "For what home begins: beginner or technician; else as your settings say.")
  private @Nullable Role role;

  private Cli() {}

  /** Runs a command line and returns its exit status. */
  static int executed(Clock clock, UserFolders folders, String... args) {
    CommandLine line = line(clock, folders, args);
    return line.execute(commandFirst(line, args));
  }

  /**
   * The command line for some words. Making a command takes time, so that those are left out that
   * none of the words names, where the words can be read without.
   */
  static CommandLine line(Clock clock, UserFolders folders, String... args) {
    Making making = new Making(clock, folders);
    List<String> words = List.of(args);
    if (!words.isEmpty() && COMMANDS.contains(words.get(0))) {
      return line(making, words.subList(0, 1));
    }
    List<String> named = COMMANDS.stream().filter(words::contains).toList();
    return line(making, read(line(making, named), args) ? named : COMMANDS);
  }

  private static CommandLine line(Making making, List<String> commands) {
    CommandLine line = new CommandLine(Cli.class, making);
    line.setCommandName(Program.here().call());
    for (String command : commands) {
      line.addSubcommand(new CommandLine(type(command), making));
    }
    line.setCaseInsensitiveEnumValuesAllowed(true);
    line.registerConverter(Integer.class, typed -> (int) whole(typed, 9));
    line.registerConverter(Long.class, typed -> whole(typed, 18));
    line.registerConverter(Path.class, Cli::path);
    Where where = new Where();
    where.of(making.folders());
    versions(line, where);
    return answering(line);
  }

  /** Has every command of a line tell the version in the same words. */
  static void versions(CommandLine line, Where where) {
    line.getCommandSpec().versionProvider(new Version(line, where));
    line.getSubcommands().values().forEach(below -> versions(below, where));
  }

  /** Whether words can be read, and ask for no help, which tells of every command. */
  private static boolean read(CommandLine line, String... words) {
    try {
      return !line.parseArgs(commandFirst(line, words)).isUsageHelpRequested();
    } catch (CommandLine.ParameterException e) {
      return false;
    }
  }

  private static Class<?> type(String command) {
    return switch (command) {
      case "start" -> StartCommand.class;
      case "resume" -> ResumeCommand.class;
      case "due" -> DueCommand.class;
      case "log" -> LogCommand.class;
      case "instrument" -> InstrumentCommand.class;
      case "reckon" -> ReckonCommand.class;
      case "advise" -> AdviseCommand.class;
      case "rehearse" -> RehearseCommand.class;
      case "check" -> CheckCommand.class;
      case "lesson" -> LessonCommand.class;
      case "data" -> DataCommand.class;
      default -> SettingsCommand.class;
    };
  }

  private static long whole(String typed, int digits) {
    try {
      return Digits.whole(typed, digits);
    } catch (NotUnderstoodException e) {
      throw new CommandLine.TypeConversionException(e.getMessage());
    }
  }

  private static Path path(String typed) {
    try {
      return Path.of(typed);
    } catch (InvalidPathException e) {
      throw new CommandLine.TypeConversionException(Letters.of(e, Encodings.ofFileNames()));
    }
  }

  /**
   * The typed words with the command moved to the front, since an option means the same before it
   * as behind it. Nothing is moved where no command follows, or where help or the version is asked
   * for.
   */
  private static String[] commandFirst(CommandLine line, String... typed) {
    int command = 0;
    while (command < typed.length) {
      String[] word = typed[command].split("=", 2);
      OptionSpec option = line.getCommandSpec().findOption(word[0]);
      if (option == null || option.usageHelp() || option.versionHelp()) {
        break;
      }
      command += word.length > 1 ? 1 : 1 + option.arity().min();
    }
    int end = command;
    Map<String, CommandLine> commands = line.getSubcommands();
    while (end < typed.length && commands.containsKey(typed[end])) {
      commands = commands.get(typed[end]).getSubcommands();
      end++;
    }
    String[] ordered = typed.clone();
    if (command < end) {
      Collections.rotate(Arrays.asList(ordered).subList(0, end), end - command);
    }
    return ordered;
  }

  /** A command line that turns each error into one line and an exit status. */
  static CommandLine answering(CommandLine line) {
    Answering answering = new Answering();
    line.setHelpFactory(answering);
    line.setParameterExceptionHandler(answering);
    line.setExecutionExceptionHandler(answering);
    line.setExecutionStrategy(answering);
    return line;
  }

  /** Not in lambda forms, of which the class archive of an image could keep none for picocli. */
  private static final class Answering
      implements CommandLine.IHelpFactory,
          CommandLine.IParameterExceptionHandler,
          CommandLine.IExecutionExceptionHandler,
          CommandLine.IExecutionStrategy {
    @Override
    public CommandLine.Help create(CommandSpec spec, CommandLine.Help.ColorScheme colours) {
      wholeSentences(spec.usageMessage());
      return new CommandLine.Help(spec, colours);
    }

    @Override
    public int handleParseException(CommandLine.ParameterException e, String[] typed) {
      return mistyped(e);
    }

    @Override
    public int handleExecutionException(
        Exception e, CommandLine commands, CommandLine.ParseResult parsed) {
      return Launch.failed(e, Where.of(commands), commands.getErr());
    }

    @Override
    public int execute(CommandLine.ParseResult parsed) {
      return ran(parsed);
    }
  }

  /** Runs what was typed; also where that is help, which may have nobody to read it. */
  private static int ran(CommandLine.ParseResult parsed) {
    try {
      return new CommandLine.RunLast().execute(parsed);
    } catch (Output.LostException e) {
      return Launch.USAGE;
    }
  }

  /** Prints one line on what is wrong and where the rest is explained; returns the exit status. */
  private static int mistyped(CommandLine.ParameterException e) {
    CommandLine commands = e.getCommandLine();
    String help = commands.getCommandSpec().qualifiedName() + " --help";
    commands.getErr().println("quarterturn: " + Complaint.of(e) + " (see: " + help + ")");
    return Launch.USAGE;
  }

  @Override
  public Integer call() throws IOException, UnreadableException, InterruptedException {
    return Launch.home(where, clock, looks, role);
  }

  /** Gives each command its clock and the user's folders, since nothing here is global. */
  private record Making(Clock clock, UserFolders folders) implements CommandLine.IFactory {
    @Override
    public <K> K create(Class<K> type) throws Exception {
      K made = CommandLine.defaultFactory().create(type);
      if (made instanceof Timed command) {
        command.at(clock);
      }
      if (made instanceof Placed placed) {
        placed.of(folders);
      } else if (made instanceof Where where) {
        where.of(folders);
      }
      return made;
    }
  }

  /**
   * Joins the lines of the help texts of a command, so that a sentence is broken only where the
   * page ends.
   */
  private static void wholeSentences(UsageMessageSpec usage) {
    usage.description(joined(usage.description()));
    usage.footer(joined(usage.footer()));
    // An option's own lines can't be set anew, so they are sentences as they stand: a test asks.
  }

  /** Lines of which each that goes on in the next is joined with it. */
  private static String[] joined(String... lines) {
    List<String> out = new ArrayList<>();
    for (String line : lines) {
      String before = out.isEmpty() ? "" : out.get(out.size() - 1);
      boolean open = !before.isEmpty() && !before.matches(".*[.!?:]");
      if (open && !line.isEmpty() && !Character.isUpperCase(line.codePointAt(0))) {
        out.set(out.size() - 1, before + " " + line);
      } else {
        out.add(line);
      }
    }
    return out.toArray(String[]::new);
  }
}
