package quarterturn.command;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.parallel.Isolated;
import picocli.CommandLine;
import quarterturn.platform.UserFolders;
import quarterturn.session.Program;

/** Whatever a person is told to type can be typed as it stands, and stands on one line. */
@Isolated
class TypedCommandsTest {
  private static final Clock CLOCK =
      Clock.fixed(Instant.parse("2027-03-02T09:30:00Z"), ZoneOffset.UTC);

  /** A command in a printed line, up to the end of the line. */
  private static final Pattern COMMAND =
      Pattern.compile("(?m)(?:^ *|: )" + Program.NAME + " ((?:[a-z]+ ?)[^\\n]*)$");

  private static final Pattern WORD = Pattern.compile("\"((?:\\\\.|[^\"])*)\"|(\\S+)");

  @TempDir Path folder;
  private Path data = Path.of("unset");

  @BeforeEach
  void inAFolderWithABlankInItsName() {
    data = folder.resolve("my data");
  }

  private static Captured run(String in, String... args) {
    return Captured.of(CLOCK, in, args);
  }

  /** The commands in what was printed. */
  private static List<String> commands(String printed) {
    List<String> commands = new ArrayList<>();
    Matcher found = COMMAND.matcher(printed);
    while (found.find()) {
      commands.add(found.group(1));
    }
    return commands;
  }

  /** A line's words, as a shell gives them. */
  private static String[] words(String command) {
    List<String> words = new ArrayList<>();
    Matcher found = WORD.matcher(command);
    while (found.find()) {
      words.add(
          found.group(1) == null ? found.group(2) : found.group(1).replaceAll("\\\\(.)", "$1"));
    }
    return words.toArray(String[]::new);
  }

  private static void parses(String command) {
    String[] words = words(command);
    CommandLine line = Cli.line(CLOCK, UserFolders.ofThisUser(), words);
    try {
      line.parseArgs(words);
    } catch (CommandLine.ParameterException e) {
      throw new AssertionError(command + ": " + e.getMessage(), e);
    }
  }

  private String[] in(String... args) {
    return Captured.at(data, args);
  }

  @Test
  void whatIsPrintedIsTypedAndWorks() {
    Captured added = run("", in("instrument", "add", "b1", "--kind", "bass-34"));
    assertThat(commands(added.out())).hasSize(2);
    commands(added.out()).forEach(TypedCommandsTest::parses);

    String start = commands(added.out()).get(1);
    Captured left = run("2\nquit\n", words(start + " --plain"));
    assertThat(left.out()).contains("Everything is kept.");
    String resume = commands(left.out()).get(0);
    assertThat(resume).startsWith("resume 2027-03-02-relief-");
    Captured again = run("quit\n", words(resume + " --plain"));
    assertWithMessage(again.err()).that(again.status()).isEqualTo(0);
    assertThat(commands(again.out())).containsExactly(resume);

    Captured due = run("", in("due"));
    assertThat(commands(due.out())).containsExactly(resume);
    assertThat(run("quit\n", words(commands(due.out()).get(0) + " --plain")).status()).isEqualTo(0);
  }

  @Test
  void soDoesWhatAMessageSays() {
    Captured none = run("", in("resume"));
    assertThat(commands(none.err().replaceAll("; ", "\n").replaceAll("start one: ", "")))
        .hasSize(1);
    Captured planned =
        run("", in("lesson", "new", folder.resolve("a lesson").toString(), "--neck", "right"));
    assertWithMessage(planned.err()).that(commands(planned.out())).hasSize(2);
    commands(planned.out()).forEach(TypedCommandsTest::parses);
    Captured nowhere =
        run("", in("lesson", "desk", folder.resolve("no lesson").toString(), "--plain"));
    assertThat(commands(nowhere.err())).hasSize(1);
    commands(nowhere.err()).forEach(TypedCommandsTest::parses);
  }

  private static void every(CommandLine line, List<CommandLine> all) {
    line.getHelp(); // joins the lines of its sentences
    all.add(line);
    line.getSubcommands().values().forEach(under -> every(under, all));
  }

  private static List<CommandLine> every() {
    List<CommandLine> all = new ArrayList<>();
    every(Cli.line(CLOCK, UserFolders.ofThisUser(), "--help"), all);
    return all;
  }

  @Test
  void soDoTheExamplesOfHelp() {
    List<String> examples = new ArrayList<>();
    for (CommandLine line : every()) {
      String page = String.join("\n", texts(line.getCommandSpec()));
      examples.addAll(commands(page.replace("${ROOT-COMMAND-NAME}", Program.NAME)));
    }
    assertThat(examples.size()).isAtLeast(5);
    examples.forEach(TypedCommandsTest::parses);
  }

  private static List<String> texts(CommandLine.Model.CommandSpec spec) {
    List<String> texts = new ArrayList<>();
    texts.addAll(List.of(spec.usageMessage().description()));
    texts.addAll(List.of(spec.usageMessage().footer()));
    spec.args().forEach(arg -> texts.addAll(List.of(arg.description())));
    return texts;
  }

  /** A line of help that goes on in the next would be cut before the end of the page. */
  @Test
  void sentencesOfHelpAreWhole() {
    for (CommandLine line : every()) {
      CommandLine.Model.CommandSpec spec = line.getCommandSpec();
      List<String> texts = texts(spec);
      for (int i = 1; i < texts.size(); i++) {
        String goesOn = texts.get(i - 1) + "|" + texts.get(i);
        assertWithMessage(spec.qualifiedName())
            .that(goesOn.matches("(?s).*[^.!?:|\\s]\\|[a-z0-9].*"))
            .isFalse();
      }
    }
  }

  /** The program's call stands in one place; no text guesses it. */
  @Test
  void noTextCallsTheProgramByItself() throws IOException {
    Pattern literal =
        Pattern.compile(
            "\"[^\"\\n]*\\bquarterturn (start|resume|due|log|instrument|reckon|rehearse|check|lesson"
                + "|settings|advise)\\b");
    try (Stream<Path> files = Files.walk(Path.of("src/main/java"))) {
      for (Path file : files.filter(f -> f.toString().endsWith(".java")).toList()) {
        String text = Files.readString(file).replace("name = \"quarterturn reckon\"", "");
        Matcher found = literal.matcher(text);
        assertWithMessage(file + (found.find() ? found.group() : ""))
            .that(literal.matcher(text.replace("(\"quarterturn due \"", "")).find())
            .isFalse();
      }
    }
  }

  @Test
  void anUnknownWordProposesTheNearest() {
    run("", in("instrument", "add", "b1", "--kind", "bass-34"));
    List<List<String>> wrong =
        List.of(
            List.of("start?", "strat"),
            List.of("show?", "instrument", "shw"),
            List.of("intonation?", "reckon", "intnation"),
            List.of("--style?", "start", "relief", "--stlye", "hard"),
            List.of("medium?", "start", "relief", "--style", "mediun"),
            List.of("relief?", "start", "relif", "--kind", "bass-34"),
            List.of("bass-34?", "start", "relief", "--kind", "bas-34"),
            List.of("b1?", "start", "relief", "--instrument", "b2"),
            List.of("too-much?", "rehearse", "--neck", "to-much"),
            List.of("html?", "log", "export", "x", "--format", "htlm"));
    for (List<String> one : wrong) {
      String[] args = one.subList(1, one.size()).toArray(String[]::new);
      Captured ran = run("", args.length == 1 ? args : in(args));
      assertWithMessage(String.join(" ", args)).that(ran.status()).isEqualTo(2);
      assertWithMessage(String.join(" ", args))
          .that(ran.err())
          .contains("(did you mean " + one.get(0));
    }
    Captured left = run("1\nquit\n", in("start", "relief-check", "--kind", "bass-34", "--plain"));
    String name = words(commands(left.out()).get(0))[1];
    String near = name.substring(0, name.length() - 1) + (name.endsWith("x") ? "z" : "x");
    assertThat(run("", in("log", "show", near)).err()).contains("(did you mean " + name + "?)");
    assertThat(run("", in("resume", "2027-03")).err()).contains("(did you mean " + name + "?)");
    assertThat(run("", "start", "zzzzzz", "--kind", "bass-34").err()).doesNotContain("did you");
  }
}
