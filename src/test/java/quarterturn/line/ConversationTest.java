package quarterturn.line;

import static com.google.common.truth.Truth.assertThat;

import java.io.IOException;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import quarterturn.session.Prompt;

/**
 * Whole conversations, compared line by line. A file begins with the prompts of its bench and
 * whether a person types; lines after "&gt; " are what was typed, or say that input ends there; the
 * last line is the status.
 */
class ConversationTest {
  private static final String END = "> (end of input)";

  private static final Map<String, Prompt> PROMPTS =
      Map.ofEntries(
          Map.entry("tell", Invented.tell()),
          Map.entry("caution", Invented.caution()),
          Map.entry("place", Invented.place()),
          Map.entry("relief", Invented.relief()),
          Map.entry("humidity", Invented.humidity()),
          Map.entry("loosen", Invented.loosen()),
          Map.entry("tighten", Invented.tighten()),
          Map.entry("settle", Invented.settle()),
          Map.entry("rest", Invented.rest()),
          Map.entry("pictures", Invented.curve()),
          Map.entry("noted", Invented.noted()),
          Map.entry("done", Invented.done()),
          Map.entry("hand-over", Invented.handOver()));

  static Stream<Path> files() throws IOException, URISyntaxException {
    URL folder = Objects.requireNonNull(ConversationTest.class.getResource("/quarterturn/line"));
    List<Path> files;
    try (Stream<Path> found = Files.list(Path.of(folder.toURI()))) {
      files = found.filter(f -> f.toString().endsWith(".txt")).sorted().toList();
    }
    assertThat(files.size()).isAtLeast(9);
    return files.stream();
  }

  @ParameterizedTest
  @MethodSource("files")
  void printsWhatTheFileSays(Path file) throws IOException {
    List<String> lines = Files.readAllLines(file);
    List<Prompt> prompts =
        Stream.of(lines.get(0).replace("bench: ", "").split(" "))
            .map(name -> Objects.requireNonNull(PROMPTS.get(name), name))
            .toList();
    boolean byHand = lines.get(1).equals("typed: by hand");
    List<String> conversation = lines.subList(2, lines.size());
    List<String> typed =
        conversation.stream()
            .filter(line -> !line.equals(END))
            .filter(line -> line.equals(">") || line.startsWith("> "))
            .map(line -> line.length() < 3 ? "" : line.substring(2))
            .toList();
    Conversation play = Conversation.of(new ScriptedBench(prompts), typed, byHand);
    List<String> printed = new ArrayList<>();
    play.printed().forEach(line -> printed.add(line.stripTrailing()));
    printed.add("status: " + play.status());
    assertThat(printed)
        .containsExactlyElementsIn(
            conversation.stream().map(line -> line.equals(END) ? ">" : line).toList())
        .inOrder();
  }
}
