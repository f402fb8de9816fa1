package quarterturn.command;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import quarterturn.reckon.Reckon;

/** What {@code reckon} prints, word for word; -Dgolden.write=true writes it anew, to be read. */
class ReckonTest {
  private static final Path TEXTS = Path.of("src/test/resources/quarterturn/reckon");
  private static final int WIDE = 80;

  @ParameterizedTest
  @ValueSource(strings = {"answers.txt", "refusals.txt"})
  void printsWhatTheTextSays(String name) throws IOException {
    Path file = TEXTS.resolve(name);
    String text = Files.readString(file);
    List<String> commands = ReckonConversations.commands(text);
    String now = ReckonConversations.replay(commands);
    if (Boolean.getBoolean("golden.write")) {
      Files.writeString(file, now);
    }
    assertThat(commands.size()).isAtLeast(30);
    assertThat(now).isEqualTo(Files.readString(file));
  }

  @Test
  void everyTopicIsAnsweredAndRefused() throws IOException {
    for (String name : List.of("answers.txt", "refusals.txt")) {
      Set<String> topics =
          ReckonConversations.commands(Files.readString(TEXTS.resolve(name))).stream()
              .map(command -> command.split(" ", -1)[0])
              .collect(Collectors.toSet());
      assertWithMessage(name).that(topics).containsAtLeastElementsIn(Reckon.topics());
    }
  }

  @Test
  void everyRefusalIsOneLineOnStandardErrorAndNothingElse() throws IOException {
    for (String command :
        ReckonConversations.commands(Files.readString(TEXTS.resolve("refusals.txt")))) {
      ReckonConversations.Ran ran = ReckonConversations.run(command);
      assertWithMessage(command).that(ran.status()).isEqualTo(2);
      assertWithMessage(command).that(ran.out()).isEmpty();
      assertWithMessage(command).that(ran.err().lines().count()).isEqualTo(1);
      boolean aTopicOfItsOwn = Reckon.topics().contains(command.split(" ", -1)[0]);
      if (aTopicOfItsOwn && !command.endsWith("extra")) {
        assertWithMessage(command).that(ran.err()).contains("--");
      }
    }
  }

  /** Neither an answer nor a refusal has a word of a programming language of its own. */
  @Test
  void everyTextSpeaksToPeople() throws IOException {
    for (String name : List.of("answers.txt", "refusals.txt")) {
      String own = Files.readString(TEXTS.resolve(name)).replaceAll("(?m)^\\$.*|\"[^\"]*\"", "");
      assertWithMessage(name)
          .that(own)
          .doesNotContainMatch(
              "(?i)\\b(nan|infinity|null|[a-z.]*exception|java|ints?|boolean|double|index|argument)\\b");
    }
  }

  @Test
  void everyAnswerFitsATerminalAndIsPlainText() throws IOException {
    for (String command :
        ReckonConversations.commands(Files.readString(TEXTS.resolve("answers.txt")))) {
      ReckonConversations.Ran ran = ReckonConversations.run(command);
      ran.out()
          .lines()
          .forEach(
              line -> {
                assertWithMessage(command).that(line.length()).isAtMost(WIDE);
                assertWithMessage(line).that(line).matches("[\\x20-\\x7e]*");
              });
      assertWithMessage(command).that(ran.out()).contains("\nFormula: ");
      assertWithMessage(command).that(ran.out()).contains("\nAssumes: ");
    }
  }

  @Test
  void everyTopicExplainsItself() {
    for (String topic : Reckon.topics()) {
      ReckonConversations.Ran ran = ReckonConversations.run(topic + " --help");
      assertWithMessage(topic).that(ran.status()).isEqualTo(0);
      assertWithMessage(topic).that(ran.out()).contains("JSON: ");
      assertWithMessage(topic).that(ran.out()).startsWith("Usage: quarterturn reckon " + topic);
    }
  }
}
