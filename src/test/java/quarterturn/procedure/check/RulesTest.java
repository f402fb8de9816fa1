package quarterturn.procedure.check;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import quarterturn.procedure.Fault;
import quarterturn.procedure.Slip;
import quarterturn.procedure.check.rule.Rule;
import quarterturn.procedure.check.walk.Walks;
import quarterturn.procedure.read.Shelf;

class RulesTest {
  /** What breaks the rule and no other, as procedures/README.md shows it. */
  static Path example(Rule rule) {
    return Path.of("src/test/resources/quarterturn/procedure/rules", rule.id(), "example.yaml");
  }

  static Stream<Rule> rules() {
    return Rules.ALL.stream();
  }

  @ParameterizedTest
  @MethodSource("rules")
  void theExampleBreaksThisRuleAlone(Rule rule) throws IOException {
    List<Fault> findings =
        Checker.check(new Shelf(null), example(rule).toString(), new Walks()).findings();
    assertThat(findings).isNotEmpty();
    for (Fault fault : findings) {
      assertWithMessage("%s", fault).that(fault.rule()).isEqualTo(rule.id());
    }
  }

  @ParameterizedTest
  @MethodSource("rules")
  void eachSaysWhatItMeansInASentence(Rule rule) {
    assertThat(rule.means()).matches("[A-Z][^\n]{10,140}\\.");
    assertThat(rule.id()).matches("[a-z]+(-[a-z]+)*");
  }

  @Test
  void noTwoShareAnId() {
    assertThat(Rules.ALL).isNotEmpty();
    assertThat(Rules.ALL.stream().map(Rule::id).toList()).containsNoDuplicates();
  }

  /** A block that takes the place of the program's own may leave a shipped sheet's steps out. */
  @Test
  void aShippedSheetIsProvenWithABlockOfTheUsersOwn(@TempDir Path own) throws IOException {
    String place = "procedures/blocks/reading.yaml";
    Path block = own.resolve(place);
    Files.createDirectories(block.getParent());
    String read = "      - <read> was read: go on\n";
    String shipped = Files.readString(Path.of(place));
    Files.writeString(block, shipped.replace(read, read.replace("go on", "<id>-cannot")));
    List<Fault> findings = Checker.check(new Shelf(own), "relief", new Walks()).findings();
    assertThat(findings.toString()).contains("nobody reaches the step found-low-again");
  }

  /** What depends on all the branches of a step, or on the limits, is explained with the walk. */
  @Test
  void whateverTheReaderRefusesIsARule() {
    Set<String> unexplained = new TreeSet<>(Arrays.stream(Slip.values()).map(Slip::word).toList());
    Rules.ALL.forEach(rule -> unexplained.remove(rule.id()));
    assertThat(Set.of(Slip.OPEN_BRANCHES.word(), Slip.OVER_LIMIT.word()))
        .containsAtLeastElementsIn(unexplained);
  }
}
