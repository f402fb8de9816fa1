package quarterturn.command;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quarterturn.report.CheckReport;

/**
 * What procedures/README.md shows of {@code check} is what it prints. To accept a change on
 * purpose, run this with {@code -Dgolden.write=true} and read the diff.
 */
class CheckReadmeTest {
  private static final Path README = Path.of("procedures", "README.md");
  private static final Pattern SHOWN =
      Pattern.compile(
          "```yaml\\n(procedure: look\\n.*?)```.*?```\\n(\\$ quarterturn check look.yaml\\n.*?)```\\n",
          Pattern.DOTALL);

  @TempDir Path folder;

  @Test
  void theExampleIsWhatIsPrinted() throws Exception {
    String readme = Files.readString(README);
    Matcher m = SHOWN.matcher(readme);
    assertThat(m.find()).isTrue();
    Path file = Files.writeString(folder.resolve("look.yaml"), m.group(1));
    List<String> complaints = new ArrayList<>();
    CheckReport report = Check.of(CheckTarget.of(List.of(file.toString()), null), complaints::add);
    assertThat(complaints).isEmpty();
    String printed =
        "$ quarterturn check look.yaml\n"
            + String.join("\n", report.lines()).replace(file.toString(), "look.yaml")
            + "\n";
    if (Boolean.getBoolean("golden.write")) {
      Files.writeString(
          README, readme.substring(0, m.start(2)) + printed + readme.substring(m.end(2)));
    }
    assertWithMessage(README.toString()).that(m.group(2)).isEqualTo(printed);
  }
}
