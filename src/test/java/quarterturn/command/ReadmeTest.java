package quarterturn.command;

import static com.google.common.truth.Truth.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What README.md shows of {@code reckon} is what it prints. */
class ReadmeTest {
  @Test
  void theExampleIsWhatIsPrinted() throws IOException {
    String readme = Files.readString(Path.of("README.md"));
    List<String> commands = ReckonConversations.commands(readme);
    assertThat(commands).hasSize(1);
    assertThat(readme).contains(ReckonConversations.replay(commands).stripTrailing());
  }
}
