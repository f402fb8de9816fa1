package quarterturn.command;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quarterturn.procedure.Slip;
import quarterturn.procedure.check.CheckTarget;
import quarterturn.report.CheckReport;

/** What procedures/README.md shows is what {@code check} takes, and what it prints. */
class CheckReadmeTest {
  private static final Path README = Path.of("procedures", "README.md");
  private static final Pattern YAML = Pattern.compile("```yaml\\n(.*?)```\\n", Pattern.DOTALL);
  private static final Pattern PRINTED =
      Pattern.compile("```\\n(\\$ quarterturn check fret-ends.yaml\\n.*?)```\\n", Pattern.DOTALL);

  /** A line of the first sheet, and the line with two slips that is shown. */
  private static final String RIGHT = "- humidity below 40 %: too-dry";

  private static final String WRONG = "- humidity below 40: to-dry";

  /** What an example without its sheet may leave open: steps that are not shown with it. */
  private static final String HEAD =
      "procedure: piece\nrevision: 1\ntitle: Piece\npurpose: A piece.\ntools: [cloth]\nsteps:\n";

  private static final String PART = "  - part: Work\n";
  private static final String END = "  - done: all-done\n    text: That is all.\n";

  @TempDir Path own;
  private String readme = "";

  /** The folder of a reader who has saved every whole sheet, block and lesson. */
  @BeforeEach
  void save() throws Exception {
    readme = Files.readString(README);
    for (String kind : List.of("procedure", "block", "lesson")) {
      for (String example : examples(kind + ": ")) {
        String name = example.lines().findFirst().orElseThrow().substring(kind.length() + 2);
        String folder = kind.equals("procedure") ? "" : kind.equals("block") ? "blocks" : kind;
        Path file = own.resolve("procedures").resolve(folder).resolve(name + ".yaml");
        Files.createDirectories(file.getParent());
        Files.writeString(file, example);
      }
    }
  }

  private List<String> examples(String beginning) {
    return YAML.matcher(readme)
        .results()
        .map(found -> found.group(1))
        .filter(example -> example.startsWith(beginning))
        .toList();
  }

  private CheckReport check(String... typed) throws Exception {
    List<String> complaints = new ArrayList<>();
    CheckReport report = Check.of(CheckTarget.of(List.of(typed), own), complaints::add);
    assertThat(complaints).isEmpty();
    return report;
  }

  @Test
  void theWholeSheetsAreClean() throws Exception {
    assertThat(examples("procedure: ")).isNotEmpty();
    assertThat(check(own.resolve("procedures").toString()).findings()).isEmpty();
  }

  /** Steps shown by themselves are right but for the steps that they lead to. */
  @Test
  void thePiecesAreClean() throws Exception {
    List<String> pieces = examples("  - ");
    assertThat(pieces.size()).isAtLeast(10);
    for (String piece : pieces) {
      String part = piece.startsWith("  - part:") ? "" : PART;
      Path file = Files.writeString(own.resolve("piece.yaml"), HEAD + part + piece + END);
      assertWithMessage(piece)
          .that(
              check(file.toString()).findings().stream()
                  .filter(finding -> !finding.rule().equals(Slip.UNKNOWN_ID.word()))
                  .toList())
          .isEmpty();
    }
  }

  /** To accept a change on purpose, run this with {@code -Dgolden.write=true} and read the diff. */
  @Test
  void theSlipsAreShownAsTheyArePrinted() throws Exception {
    Matcher m = PRINTED.matcher(readme);
    assertThat(m.find()).isTrue();
    assertThat(readme).contains("`" + WRONG + "`");
    Path file = own.resolve("procedures").resolve("fret-ends.yaml");
    String sheet = Files.readString(file);
    assertThat(sheet).contains(RIGHT);
    Files.writeString(file, sheet.replace(RIGHT, WRONG));
    String printed =
        "$ quarterturn check fret-ends.yaml\n"
            + String.join("\n", check(file.toString()).lines())
                .replace(file.toString(), "fret-ends.yaml")
            + "\n";
    if (Boolean.getBoolean("golden.write")) {
      Files.writeString(
          README, readme.substring(0, m.start(1)) + printed + readme.substring(m.end(1)));
    }
    assertWithMessage(README.toString()).that(m.group(1)).isEqualTo(printed);
  }
}
