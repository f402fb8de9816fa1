package quarterturn.procedure;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.constructor.SafeConstructor;
import quarterturn.procedure.check.rule.text.DirectionWords;
import quarterturn.unit.Turn;

/**
 * Every text that pairs tightening or loosening with a sense or with a smaller or larger gap says
 * what {@link Turn#sense} says. The convention is common practice, no source.
 */
class DirectionWordsTest {
  private static final Pattern JOINED = Pattern.compile("\"\\s*\\+\\s*\"");
  private static final Pattern LITERAL = Pattern.compile("\"((?:[^\"\\\\\n]|\\\\.)*)\"");

  /** What is right though it speaks of another way round. */
  private static final Set<String> OTHER_WAY_ROUND =
      Set.of(
          "Some rods work the other way round, so the gauge has the last word.",
          // A wrong idea, which the answer beside it mends.
          "The other way round.",
          "And one that is not: a rod that works the other way round.",
          "The rod may work the other way round, or something else is moving the neck.",
          "The neck moves the other way round.",
          "Only the gauge shows a rod that works the other way round.",
          "rod that works the other way round",
          "the rod works the other way round");

  /** Whether a sentence pairs a sense or a gap with something else that has a direction. */
  private static boolean pairs(String sentence) {
    Set<String> sorts =
        DirectionWords.said(sentence).stream()
            .map(DirectionWords.Said::sort)
            .collect(Collectors.toSet());
    return sorts.size() > 1 && (sorts.contains("sense") || sorts.contains("gap"));
  }

  @Test
  void everyTextSaysWhatTheFunctionSays() throws IOException {
    List<String> wrong = new ArrayList<>();
    sentences().forEach(sentence -> wrong.addAll(DirectionWords.contradictions(sentence)));
    assertThat(wrong).isEmpty();
  }

  @Test
  void anySentenceTurnedRoundIsNoticed() throws IOException {
    List<String> pairing = sentences().stream().filter(DirectionWordsTest::pairs).toList();
    assertThat(pairing.size()).isAtLeast(14);
    for (String sentence : pairing) {
      String turned = DirectionWords.WORD.matcher(sentence).replaceAll(DirectionWordsTest::turned);
      assertWithMessage(turned).that(DirectionWords.contradictions(turned)).isNotEmpty();
    }
  }

  /** The rod's words stay, all others are turned round. */
  private static String turned(MatchResult found) {
    return switch (found.group().toLowerCase(Locale.ROOT)) {
      case "clockwise" -> "anticlockwise";
      case "anticlockwise" -> "clockwise";
      case "smaller" -> "larger";
      case "larger" -> "smaller";
      default -> found.group();
    };
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Facing the end of the rod nut, clockwise loosens an ordinary rod.",
        "Clockwise tightens, anticlockwise tightens.",
        "Loosening the rod makes the gap smaller.",
        "Say it first: too much relief, loosen, larger gap."
      })
  void aWrongSentenceIsNoticed(String sentence) {
    assertThat(DirectionWords.contradictions(sentence)).isNotEmpty();
  }

  @Test
  void nothingElseIsSaidToWorkTheOtherWayRound() throws IOException {
    TreeSet<String> others = new TreeSet<>();
    for (String sentence : sentences()) {
      boolean ofTheRod = Pattern.compile("\\b(rod|wheel|neck)").matcher(sentence).find();
      if (sentence.contains("other way round") && (ofTheRod || sentence.length() < 25)) {
        others.add(sentence);
      }
    }
    assertThat(others).containsExactlyElementsIn(new TreeSet<>(OTHER_WAY_ROUND));
  }

  private static List<String> sentences() throws IOException {
    List<String> texts = new ArrayList<>();
    for (String folder : List.of("procedures", "safety")) {
      for (Path file : files(folder, ".yaml")) {
        collect(
            new Yaml(new SafeConstructor(new LoaderOptions())).load(Files.readString(file)), texts);
      }
    }
    for (String file : List.of("README.md", "procedures/README.md", "safety/README.md")) {
      // What the rules show is wrong on purpose.
      String text = Files.readString(Path.of(file)).replaceAll("(?s)<!-- rules:.*", "");
      texts.addAll(List.of(text.split("\n\\s*\n|\\|", -1)));
    }
    for (Path file : files("src/main/java", ".java")) {
      Matcher literal = LITERAL.matcher(JOINED.matcher(Files.readString(file)).replaceAll(""));
      while (literal.find()) {
        texts.add(literal.group(1).replace("\\n", " "));
      }
    }
    List<String> out = new ArrayList<>();
    for (String text : texts) {
      for (String sentence : text.replaceAll("\\s+", " ").strip().split("(?<=[.!?;])\\s", -1)) {
        out.add(sentence);
      }
    }
    return out;
  }

  private static List<Path> files(String folder, String end) throws IOException {
    try (Stream<Path> files = Files.walk(Path.of(folder))) {
      return files.filter(file -> file.toString().endsWith(end)).sorted().toList();
    }
  }

  private static void collect(Object node, List<String> texts) {
    if (node instanceof Map<?, ?> map) {
      map.values().forEach(value -> collect(value, texts));
    } else if (node instanceof List<?> list) {
      list.forEach(value -> collect(value, texts));
    } else if (node instanceof String text) {
      texts.add(text);
    }
  }
}
