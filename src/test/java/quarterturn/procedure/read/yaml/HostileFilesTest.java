package quarterturn.procedure.read.yaml;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;

import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.Arrays;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import quarterturn.Draws;
import quarterturn.procedure.read.Readings;

/** No bytes, however made, do anything but fail kindly and soon. */
@Tag("slow")
class HostileFilesTest {
  private static final int MOST = Source.MOST_BYTES;
  private static final int MUTANTS = Draws.of(2000);

  static Stream<Arguments> hostile() {
    String laughs =
        IntStream.range(1, 40)
            .mapToObj(i -> "a" + i + ": &a" + i + " [*a" + (i - 1) + ", *a" + (i - 1) + "]\n")
            .collect(Collectors.joining("", "a0: &a0 [x, x]\n", ""));
    return Stream.of(
        Arguments.of("alias bomb", laughs, "not-yaml: an alias (*a38)"),
        Arguments.of("brackets", "[".repeat(MOST), "more than 20 deep"),
        Arguments.of("braces", "{a: ".repeat(MOST / 4), "more than 20 deep"),
        Arguments.of("dashes", "- ".repeat(MOST / 2), "more than 20 deep"),
        Arguments.of("questions", "? ".repeat(MOST / 2), "more than one word"),
        Arguments.of(
            "too large", "#".repeat(MOST + 1), "more than 262144 bytes, the most that is read"),
        Arguments.of("one long word", "x".repeat(MOST), "expected a procedure here"),
        Arguments.of("long flow", "[" + "x,".repeat(MOST / 2 - 1) + "]", "found a list"),
        Arguments.of(
            "long steps", "steps: [" + "x,".repeat(MOST / 2 - 9) + "]", "130864 more faults"),
        Arguments.of("many keys", keys(), "a procedure has no key"),
        Arguments.of(
            "spaces in an amount", step("x", "0" + " ".repeat(MOST - 300) + "x"), "too long"),
        Arguments.of(
            "blanks", step("{a}".repeat(MOST / 3 - 100), "5 min"), "there is no blank {a}"),
        Arguments.of("a tag of Java", "!!javax.script.ScriptEngineManager [x]", "a tag (!!javax"),
        Arguments.of("a number too large", "a: \"\\UFFFFFFFF\"", "cannot be read as YAML"),
        Arguments.of("anchors", "&a ".repeat(MOST / 3), "4: "),
        Arguments.of("unnamed steps", "steps: [" + "{tell},".repeat(MOST / 7 - 9) + "]", "tell"),
        Arguments.of("cases", "steps: [{cases: [" + "x,".repeat(MOST / 2 - 20) + "]}]", "x"),
        Arguments.of(
            "a chain of cases",
            "steps: [{part: P}, {cases: [" + "{a: b},".repeat(30_000) + "{otherwise: c}]}]",
            "more faults"),
        Arguments.of(
            "answers",
            "steps: [{part: P}, {choose: c, text: T, answers: [" + "{a: b},".repeat(20_000) + "]}]",
            "more faults"),
        Arguments.of(
            "keys of a block",
            "steps: [{part: P}, {use: make-ready, " + values(10_000) + "}]",
            "the block has no step"));
  }

  private static String keys() {
    return IntStream.range(0, 20_000)
        .mapToObj(i -> "k" + i + ": 1\n")
        .collect(Collectors.joining());
  }

  private static String values(int many) {
    return IntStream.range(0, many)
        .mapToObj(i -> "k" + i + ": 1")
        .collect(Collectors.joining(", "));
  }

  private static String step(String text, String time) {
    return "steps: [{part: P}, {wait: w, text: \"" + text + "\", for: \"" + time + "\"}]";
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("hostile")
  @Timeout(5)
  void isRefused(String name, String text, String said) {
    assertWithMessage(name).that(Readings.complaint(name, Readings.utf8(text))).contains(said);
  }

  @Test
  @Timeout(60)
  void mutationsOfAGoodFileAreReadOrRefused() {
    byte[] good = Readings.bytes("good/every-step.yaml");
    SplittableRandom random = new SplittableRandom(20260);
    int refused = 0;
    long slowest = 0;
    for (int i = 0; i < MUTANTS; i++) {
      byte[] mutant = mutate(good, random);
      long start = System.nanoTime();
      String complaint = Readings.complaint("mutant", mutant);
      slowest = Math.max(slowest, System.nanoTime() - start);
      refused += complaint.isEmpty() ? 0 : 1;
      if (!complaint.isEmpty()) {
        assertWithMessage("mutant %s", i).that(complaint).matches("(?s)mutant:\\d+:\\d+: .*");
      }
    }
    assertThat(refused).isGreaterThan(MUTANTS / 2);
    assertThat(refused).isLessThan(MUTANTS);
    assertThat(Duration.ofNanos(slowest)).isLessThan(Duration.ofSeconds(1));
  }

  private static byte[] mutate(byte[] good, SplittableRandom random) {
    byte[] bytes = good.clone();
    for (int i = random.nextInt(1, 4); i > 0 && bytes.length > 0; i--) {
      int at = random.nextInt(bytes.length);
      int to = Math.min(bytes.length, at + random.nextInt(1, 60));
      bytes =
          switch (random.nextInt(6)) {
            case 0 -> changed(bytes, at, (byte) random.nextInt(256));
            case 1 ->
                changed(bytes, at, (byte) "\n\t :-[]{}&*!|>'\"%@?,#".charAt(random.nextInt(21)));
            case 2 -> joined(bytes, 0, at, bytes, to, bytes.length);
            case 3 -> joined(bytes, 0, to, bytes, at, bytes.length);
            case 4 -> Arrays.copyOf(bytes, Math.max(1, at));
            default -> swapped(bytes, random);
          };
    }
    return bytes;
  }

  private static byte[] changed(byte[] bytes, int at, byte value) {
    bytes[at] = value;
    return bytes;
  }

  private static byte[] joined(byte[] a, int from, int to, byte[] b, int start, int end) {
    byte[] both = Arrays.copyOf(Arrays.copyOfRange(a, from, to), to - from + end - start);
    System.arraycopy(b, start, both, to - from, end - start);
    return both;
  }

  /** Two lines change places. */
  private static byte[] swapped(byte[] bytes, SplittableRandom random) {
    String[] lines = new String(bytes, StandardCharsets.ISO_8859_1).split("\n", -1);
    int a = random.nextInt(lines.length);
    int b = random.nextInt(lines.length);
    String line = lines[a];
    lines[a] = lines[b];
    lines[b] = line;
    return String.join("\n", lines).getBytes(StandardCharsets.ISO_8859_1);
  }
}
