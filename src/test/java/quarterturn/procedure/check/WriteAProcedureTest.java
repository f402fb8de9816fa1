package quarterturn.procedure.check;

import static com.google.common.truth.Truth.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quarterturn.procedure.Fault;
import quarterturn.procedure.Shelf;

/** What procedures/README.md says of the rules is what the rules themselves say and show. */
class WriteAProcedureTest {
  private static final Path FILE = Path.of("procedures", "README.md");
  private static final String BEGIN = "<!-- rules: written by WriteAProcedureTest -->\n";
  private static final String END = "<!-- end of rules -->\n";

  @TempDir Path folder;

  @Test
  void theRulesStandThereAsTheyAre() throws IOException {
    String text = Files.readString(FILE);
    int from = text.indexOf(BEGIN) + BEGIN.length();
    int to = text.indexOf(END);
    assertThat(to).isAtLeast(from);
    String rules = rules();
    if (Boolean.getBoolean("golden.write")) {
      Files.writeString(FILE, text.substring(0, from) + rules + text.substring(to));
      return;
    }
    assertThat(text.substring(from, to)).isEqualTo(rules);
  }

  private String rules() throws IOException {
    StringBuilder text = new StringBuilder("\n");
    for (Rule rule : Rules.ALL) {
      text.append("**").append(rule.id()).append("** ").append(rule.means()).append("\n\n");
      text.append("```text\n").append(finding(rule)).append("\n```\n\n");
    }
    return text.toString();
  }

  /** The first finding on the rule's bad example. */
  private String finding(Rule rule) throws IOException {
    Path file = folder.resolve("example.yaml");
    Files.writeString(file, rule.examples().bad().file());
    Fault fault = Checker.check(new Shelf(null), file.toString()).findings().get(0);
    return fault.toString().replace(file.toString(), "example.yaml");
  }
}
