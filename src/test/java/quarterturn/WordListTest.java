package quarterturn;

import static com.google.common.truth.Truth.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** One thing has one name in all that people read: the sheets, what the program says, README.md. */
class WordListTest {
  /** What is not said, and what stands there instead. A blank is any white space. */
  private static final List<Word> WORDS =
      List.of(
          new Word("(pitch )?meters?", "tuner, or clip-on tuner"),
          new Word("leaf|(feeler|the|these|finer|two|thin|clean|slide) leaves", "gauge, gauges"),
          new Word("leaves (from|of|in steps|over|show)", "gauges"),
          new Word("slotted nut", "nut"),
          new Word("(?<!truss\\s{1,60})rod nut", "truss rod nut"),
          new Word("boards?", "fingerboard"),
          new Word("(its|tuning|string) posts?|(tuning|string) machines?", "tuning peg"),
          new Word("windows?", "range; what lies in its window is in range"),
          new Word("owns? (it|(the|a) (noise|buzz))|owner of (the|a) (noise|buzz)", "cause"),
          new Word("(leaf|gauge)s? (just )?lifts?|lifts (it|the string)", "pushes the string up"));

  /** Where such a word is said all the same, in which files, and why. */
  private static final List<Except> EXCEPT =
      List.of(
          new Except("(another|This) window|the window is closed", ".*java", "a terminal's"),
          new Except("Windows", "README.md", "a system's name"),
          new Except("sunny windows", ".*results.yaml", "a house's"),
          new Except("a maple board", ".*MoistureTopic.java", "a plank"),
          new Except("a leaf passes|under a leaf|leaves of", ".*(FirstGap|Condition).java", "JSON"),
          new Except("window (low|high)|in window", ".*SheetCsv.java", "in its head"),
          new Except("windows", ".*EventJson.java", "a key of a record"));

  /** Not held to it: hazards, which users have copies of, and what reads words of others. */
  private static final Pattern LEFT = Pattern.compile("safety/hazards.yaml|.*/check/words/.*");

  /** What nobody reads: remarks, keys, all code but sentences; blanks and names with hyphens. */
  private static final Pattern YAML = Pattern.compile("(?m)(^|\\s)#.*$|\\w+:(?=\\s)");

  private static final Pattern MARKDOWN = Pattern.compile("(?s)```.*?```|`[^`]*`");
  private static final Pattern JAVA =
      Pattern.compile("//.*|/\\*(?s:.*?)\\*/|'\\\\?.'|\"([^\"\\\\\n]|\\\\.)*\"|[^\\s+\"'/]+|/");
  private static final Pattern NAME = Pattern.compile("\\{[\\w-]+}|\\w+(-\\w+)+");

  private record Word(String said, String instead) {}

  private record Except(String said, String file, String why) {
    boolean holds(String path, String text, int at) {
      return path.matches(file)
          && whole(said).matcher(text).results().anyMatch(r -> r.start() <= at && at < r.end());
    }
  }

  private static Pattern whole(String said) {
    return Pattern.compile("(?i)\\b(" + said.replace(" ", "\\s+") + ")\\b");
  }

  /** A file with bars for all that nobody reads, so that each word stays on its line. */
  private static String read(String path, String text) {
    Pattern unread = path.endsWith("java") ? JAVA : path.endsWith("md") ? MARKDOWN : YAML;
    String read = unread.matcher(text).replaceAll(r -> Matcher.quoteReplacement(said(r.group())));
    return NAME.matcher(unread == JAVA ? read.replace('+', ' ') : read).replaceAll(" ");
  }

  /** A literal that is a sentence, or part of one; bars for all else. */
  private static String said(String code) {
    boolean sentence = code.startsWith("\"") && code.matches("\"(?!.*(\\\\b|class=)).* .*");
    return sentence ? code.replace('"', ' ') : code.replaceAll("\\S", "|");
  }

  private static List<String> offences(String path, String whole) {
    String text = read(path, whole);
    List<String> found = new ArrayList<>();
    for (Word word : WORDS) {
      for (Matcher at = whole(word.said()).matcher(text); at.find(); ) {
        int start = at.start();
        if (EXCEPT.stream().noneMatch(except -> except.holds(path, text, start))) {
          long line = 1 + text.substring(0, start).chars().filter(c -> c == '\n').count();
          found.add(path + ":" + line + ": \"" + at.group() + "\": write " + word.instead());
        }
      }
    }
    return found;
  }

  @Test
  void allThatPeopleReadKeepsToTheList() throws IOException {
    List<String> found = new ArrayList<>();
    for (String root : List.of("README.md", "procedures", "safety", "src/main/java")) {
      try (Stream<Path> files = Files.walk(Path.of(root))) {
        for (String file : files.map(Path::toString).toList()) {
          if (file.matches(".*\\.(yaml|java|md)") && !LEFT.matcher(file).matches()) {
            found.addAll(offences(file, Files.readString(Path.of(file))));
          }
        }
      }
    }
    assertThat(found).isEmpty();
  }

  @Test
  void whatBreaksItIsNamedByItsLine() {
    assertThat(offences("a.yaml", "a: # a leaf\n  text: A pitch meter,\n    not {window}."))
        .containsExactly("a.yaml:2: \"pitch meter\": write tuner, or clip-on tuner");
    String code = "/* leaf */ say(\"A truss \"\n + \"rod nut. \", \"A rod nut.\", \"leaf\")";
    assertThat(offences("A.java", code))
        .containsExactly("A.java:2: \"rod nut\": write truss rod nut");
    assertThat(offences("a.md", "It lies\nin its window, not `window`.")).hasSize(1);
  }
}
