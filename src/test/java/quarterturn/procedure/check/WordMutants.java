package quarterturn.procedure.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
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
          "Put the key in and tighten the rod to three o'clock.");

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

  /**
   * What calls for a hazard, and the same act in other words.
   *
   * @param hazard its id
   * @param phrase of a text
   * @param others said in place of the phrase
   */
  private record Calls(String hazard, String phrase, List<String> others) {
    static Calls of(String hazard, String phrase, String... others) {
      return new Calls(hazard, phrase, List.of(others));
    }

    Matcher in(String text) {
      return Pattern.compile(phrase, Pattern.CASE_INSENSITIVE).matcher(text);
    }
  }

  private static final List<Calls> CALLS =
      List.of(
          Calls.of("string-whip", "slacken", "let down", "loosen"),
          Calls.of("string-whip", "tune every", "bring every", "tune all the"),
          Calls.of("string-whip", "stretch each", "pull at each", "tug at each"),
          Calls.of("small-parts", "take out the screws", "undo the screws", "remove the screws"),
          Calls.of("small-parts", "loosen its screws", "undo its screws", "take out its screws"),
          Calls.of("posture", "lay out the tools", "get out the tools"),
          Calls.of("posture", "leave the instrument out", "take the instrument out"),
          Calls.of("finish", "with a driver", "with any driver", "with a screwdriver"),
          Calls.of("string-ends", "cut it", "snip it", "clip it"),
          Calls.of("string-ends", "trim the ends", "clip the ends", "cut the ends"),
          Calls.of("fret-ends", "along both edges", "along either edge"),
          Calls.of("fret-ends", "along the edges", "along each edge"),
          Calls.of("loud", "the amplifier", "an amp"),
          Calls.of("saddle-screws", "before its saddle", "and then its saddle"),
          Calls.of("bridge-falls", "one string at a time", "one after the other"));

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
      return head + '"' + words + '"';
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
      words += more.isEmpty() ? "\\n" : " " + more;
      end++;
    }
    String head = written.lines.get(line).substring(0, key ? said.start(3) : said.start(6));
    boolean quoted = words.startsWith("\"");
    String plain = quoted ? words.substring(1, words.length() - 1) : words.replace("\"", "\\\"");
    return new Said(head, key ? said.group(2) : "text", plain, line, end);
  }

  /** An order that is none of the step's stands behind its words. */
  private void ordered(Written.Step step, Said said) {
    boolean near = said.words().matches(".*\\b(rod nut|truss rod|the key)\\b.*");
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
    // A procedure that needs the relief has a reading of it to tell.
    boolean known = written.lines.stream().anyMatch(line -> line.startsWith("needs: [relief"));
    boolean last = step.kind().matches("done|hand-over") && said.key().equals("text") && !known;
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
    String words = label.group(3) + ". " + order;
    written.replace(
        Operator.TEXT,
        step.name() + ": answer " + label.group(1) + ": " + order,
        line,
        line + 1,
        List.of("      - " + label.group(1) + ": \"" + words + way + "\""));
  }

  /** The act stays in other words, its hazard is gone, and the program is told nothing of it. */
  private void reworded(Written.Step step, Said said) {
    if (!said.key().equals("text") || step.kind().equals("use")) {
      return;
    }
    for (Calls calls : CALLS) {
      Matcher phrase = calls.in(said.words());
      for (String other : phrase.find() ? calls.others() : List.<String>of()) {
        Set<String> hazards = new TreeSet<>(called(said.words()));
        hazards.remove(calls.hazard());
        String words = phrase.replaceAll(was -> cased(was.group(), other));
        List<String> changed = new ArrayList<>(List.of(said.with(words)));
        changed.add("    hazards: " + hazards);
        written.lines.subList(said.end(), step.end()).stream()
            .filter(line -> !line.matches(DOES))
            .forEach(changed::add);
        String what = step.name() + ": " + calls.phrase() + " -> " + other;
        written.replace(Operator.HAZARD, what, said.from(), step.end(), changed);
      }
    }
  }

  private static Set<String> called(String text) {
    return CALLS.stream()
        .filter(calls -> calls.in(text).find())
        .map(Calls::hazard)
        .collect(Collectors.toSet());
  }

  private static String cased(String was, String now) {
    boolean capital = Character.isUpperCase(was.charAt(0));
    return capital ? now.substring(0, 1).toUpperCase(Locale.ROOT) + now.substring(1) : now;
  }

  /** A step that does or says what calls for a hazard names none. */
  private void uncautioned(Written.Step step) {
    List<String> lines = written.lines(step);
    boolean does = lines.stream().anyMatch(line -> line.matches(DOES));
    boolean says = !called(String.join(" ", lines)).isEmpty();
    if (step.kind().equals("tell") && (does || says)) {
      int end = step.end();
      while (written.lines.get(end - 1).isBlank()) {
        end--;
      }
      String what = step.name() + " names no hazard";
      written.replace(Operator.DELETE_CAUTION, what, end, end, List.of("    hazards: []"));
    }
  }
}
