package quarterturn.procedure.check;

import static com.google.common.truth.Truth.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import quarterturn.procedure.Fault;
import quarterturn.procedure.check.rule.Rule;
import quarterturn.procedure.check.walk.Walks;
import quarterturn.procedure.read.Shelf;

/** What procedures/README.md says of the rules is what the rules themselves say and show. */
class WriteAProcedureTest {
  private static final Path FILE = Path.of("procedures", "README.md");
  private static final String BEGIN = "<!-- rules: written by WriteAProcedureTest -->\n";
  private static final String END = "<!-- end of rules -->\n";

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

  private static String rules() throws IOException {
    StringBuilder text = new StringBuilder("\n");
    for (Rule rule : Rules.ALL) {
      text.append("**").append(rule.id()).append("** ").append(rule.means()).append("\n\n");
      text.append("```text\n").append(finding(rule)).append("\n```\n\n");
    }
    return text.toString();
  }

  /** The first finding on the rule's example. */
  private static String finding(Rule rule) throws IOException {
    Path file = RulesTest.example(rule);
    Fault fault = Checker.check(new Shelf(null), file.toString(), new Walks()).findings().get(0);
    return fault.toString().replace(file.toString(), "example.yaml");
  }
}
