package quarterturn.command;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import quarterturn.reckon.Reckon;
import quarterturn.session.store.Sessions;
import quarterturn.session.store.Store;

/**
 * Command lines of {@code reckon} with what each printed, as a text that can be read in review: a
 * line {@code $ quarterturn reckon ...} and what follows it.
 */
final class ReckonConversations {
  static final String PROMPT = "$ quarterturn reckon ";

  private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|'([^']*)'|(\\S+)");

  /** The folders of somebody who has no instrument yet. */
  private static final Sessions NOBODY =
      new Sessions(Store.at(Path.of("no-such-folder")), null, Clock.systemUTC());

  private ReckonConversations() {}

  /** What one run gave. */
  record Ran(int status, String out, String err) {}

  /** Runs what follows {@code reckon}. */
  static Ran run(String typed) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    int status =
        Cli.answering(Reckon.line(new PrintWriter(out, true), new PrintWriter(err, true), NOBODY))
            .execute(words(typed).toArray(String[]::new));
    return new Ran(status, lines(out), lines(err));
  }

  /** Every conversation of a text, as it runs now, in the form of the text. */
  static String replay(List<String> commands) {
    StringBuilder text = new StringBuilder();
    for (String command : commands) {
      Ran ran = run(command);
      text.append(PROMPT).append(command).append('\n').append(ran.out()).append(ran.err());
      text.append(ran.status() == 0 ? "" : "[exit " + ran.status() + "]\n").append('\n');
    }
    return text.toString();
  }

  /** What is typed in a text of conversations. */
  static List<String> commands(String text) {
    return text.lines()
        .filter(line -> line.startsWith(PROMPT))
        .map(line -> line.substring(PROMPT.length()))
        .toList();
  }

  private static String lines(StringWriter text) {
    return text.toString().replace(System.lineSeparator(), "\n");
  }

  private static List<String> words(String typed) {
    List<String> words = new ArrayList<>();
    Matcher m = WORD.matcher(typed);
    while (m.find()) {
      words.add(m.group(1) != null ? m.group(1) : m.group(2) != null ? m.group(2) : m.group(3));
    }
    return words;
  }
}
