package quarterturn.procedure.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.check.Mutant.Operator;

/** Changes to what a step says: an order that goes beyond it, a danger in words unlooked for. */
final class WordMutants {
  /** A text of a step or of a key within it; a step's text that stands for its name. */
  private static final Pattern SAID =
      Pattern.compile("( {4,})(text|brief|why): (.*)|(  - )(tell|choose|note): (\\S+ .*)");

  private static final Pattern LABEL =
      Pattern.compile("      - ([a-z0-9-]+): (\"?)(.*?)(\"?)( -> [a-z0-9-]+)?");

  /** Orders of a turn of the rod. */
  private static final List<String> TURNS =
      List.of(
          "Then give the rod nut a quarter turn.",
          "Tighten the truss rod by an eighth.",
          "Turn the rod nut on until it feels firm.",
          "Loosen the rod by half a turn.",
          "Put the key in and tighten it to three o'clock.");

  /** Orders of other acts. */
  private static final List<String> ACTS =
      List.of(
          "Then file the slots of the nut deeper.",
          "Loosen the screws of the neck.",
          "Cut all the strings at once.",
          "Lower the saddles by a full turn.",
          "Sand the high frets down.");

  /** An order that leans on what was named before it. */
  private static final String LEANS = "Loosen it to three o'clock.";

  /** What calls for a hazard, and the same act in words that do not. */
  private static final Map<String, String> REWORDED =
      Map.ofEntries(
          Map.entry("slacken", "let down"),
          Map.entry("tune every", "bring every"),
          Map.entry("stretch each", "pull at each"),
          Map.entry("bend each", "kink each"),
          Map.entry("take out the screws", "undo the screws"),
          Map.entry("loosen its screws", "undo its screws"),
          Map.entry("lay out the tools", "get out the tools"),
          Map.entry("leave the instrument out of its case", "take the instrument out of its case"),
          Map.entry("with a driver", "with any driver"),
          Map.entry("cut it", "snip it"),
          Map.entry("trim the ends", "clip the ends"),
          Map.entry("along both edges", "along either edge"),
          Map.entry("along the edges", "along each edge"),
          Map.entry("amplifier", "amp"),
          Map.entry("before its saddle", "and then its saddle"),
          Map.entry("one string at a time", "one after the other"));

  private static final Function<String, Pattern> ANY_CASE =
      phrase -> Pattern.compile(phrase, Pattern.CASE_INSENSITIVE);

  /** Where a step tells the program what calls for a hazard. */
  private static final String DOES =
      "    (changes: .*|establishes: \\[(at-pitch|detuned|neck-loose|neck-fast)])";

  private static final String READING = "The relief is {reading}.";

  private final Written written;

  WordMutants(Written written) {
    this.written = written;
  }

  /**
   * Words of a step.
   *
   * @param head what stands before them on their first line
   * @param key what they are
   * @param words they themselves, on one line, without their quotation marks
   * @param end the line behind them
   */
  private record Said(String head, String key, String words, int from, int end) {
    String with(String words) {
      return head + '"' + words.replace("\"", "\\\"") + '"';
    }
  }

  void make() {
    for (Written.Step step : written.steps()) {
      for (int line = step.from(); line < step.end(); line++) {
        Said said = said(step, line);
        if (said != null) {
          ordered(step, said);
          unread(step, said);
          reworded(step, said);
        }
        labelled(step, line);
      }
      uncautioned(step);
    }
  }

  private @Nullable Said said(Written.Step step, int line) {
    Matcher said = SAID.matcher(written.lines.get(line));
    if (!said.matches()) {
      return null;
    }
    boolean key = said.group(2) != null;
    String words = key ? said.group(3) : said.group(6);
    String indent = key ? said.group(1) : "    ";
    int end = line + 1;
    while (end < step.end() && written.lines.get(end).matches("|" + indent + " +.*")) {
      String more = written.lines.get(end).strip();
      words += more.isEmpty() ? "\\n\\n" : " " + more;
      end++;
    }
    String head = written.lines.get(line).substring(0, key ? said.start(3) : said.start(6));
    String plain = words.replaceAll("^\"|\"$", "").replace("\\n\\n ", "\\n\\n");
    return new Said(head, key ? said.group(2) : "text", plain, line, end);
  }

  /** An order that is none of the step's stands behind its words. */
  private void ordered(Written.Step step, Said said) {
    boolean near = said.words().matches(".*\\b(rod|nut|key)\\b.*");
    for (List<String> orders : List.of(TURNS, ACTS)) {
      List<String> fit = new ArrayList<>(orders);
      if (near && orders.equals(TURNS)) {
        fit.add(LEANS);
      }
      String order = written.drawn(step.name() + said.key() + said.words() + orders.size(), fit);
      appended(step, said, order);
    }
  }

  private void appended(Written.Step step, Said said, String sentence) {
    String stop = said.words().matches(".*[.?!]") ? " " : ". ";
    String what = step.name() + ": " + said.key() + ": " + sentence;
    List<String> now = List.of(said.with(said.words() + stop + sentence));
    written.replace(Operator.TEXT, what, said.from(), said.end(), now);
  }

  /** Last words tell a reading that may not have been taken. */
  private void unread(Written.Step step, Said said) {
    boolean last = step.kind().matches("done|hand-over") && said.key().equals("text");
    if (last && !said.words().contains("{reading}")) {
      appended(step, said, READING);
    }
  }

  /** An answer's label orders what is none of its question's. */
  private void labelled(Written.Step step, int line) {
    Matcher label = LABEL.matcher(written.lines.get(line));
    if (!step.kind().equals("choose") || !label.matches()) {
      return;
    }
    String order = written.drawn(step.name() + label.group(1), TURNS);
    String way = label.group(5) == null ? "" : label.group(5);
    String words = label.group(3).replace("\"", "\\\"") + ". " + order;
    written.replace(
        Operator.TEXT,
        step.name() + ": answer " + label.group(1) + ": " + order,
        line,
        line + 1,
        List.of("      - " + label.group(1) + ": \"" + words + "\"" + way));
  }

  /** The act stays, in words that call for no hazard, and the program is told nothing of it. */
  private void reworded(Written.Step step, Said said) {
    if (!said.key().equals("text") || step.kind().equals("use")) {
      return;
    }
    for (Map.Entry<String, String> one : REWORDED.entrySet()) {
      Matcher phrase = ANY_CASE.apply(one.getKey()).matcher(said.words());
      if (phrase.find()) {
        String words = phrase.replaceAll(found -> cased(found.group(), one.getValue()));
        List<String> changed = new ArrayList<>(List.of(said.with(words)));
        written.lines.subList(said.end(), step.end()).stream()
            .filter(line -> !line.matches(DOES))
            .forEach(changed::add);
        String what = step.name() + ": " + one.getKey() + " -> " + one.getValue();
        written.replace(Operator.HAZARD, what, said.from(), step.end(), changed);
      }
    }
  }

  private static String cased(String was, String now) {
    boolean capital = Character.isUpperCase(was.charAt(0));
    return capital ? now.substring(0, 1).toUpperCase(Locale.ROOT) + now.substring(1) : now;
  }

  /** A step that does or says what calls for a hazard names none. */
  private void uncautioned(Written.Step step) {
    List<String> lines = written.lines(step);
    boolean calls =
        lines.stream().anyMatch(line -> line.matches(DOES))
            || REWORDED.keySet().stream()
                .anyMatch(phrase -> ANY_CASE.apply(phrase).matcher(String.join(" ", lines)).find());
    if (calls && step.kind().equals("tell")) {
      int end = step.end();
      while (written.lines.get(end - 1).isBlank()) {
        end--;
      }
      String what = step.name() + " names no hazard";
      written.replace(Operator.DELETE_CAUTION, what, end, end, List.of("    hazards: []"));
    }
  }
}
