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
import quarterturn.procedure.Shelf;
import quarterturn.procedure.Slip;

class RulesTest {
  @TempDir Path folder;

  static Stream<Rule> rules() {
    return Rules.ALL.stream();
  }

  private List<Fault> findings(Example example) throws IOException {
    Path file = Files.writeString(folder.resolve("example.yaml"), example.file());
    return Checker.check(new Shelf(null), file.toString()).findings();
  }

  @ParameterizedTest
  @MethodSource("rules")
  void theBadExampleBreaksThisRuleAlone(Rule rule) throws IOException {
    List<Fault> findings = findings(rule.examples().bad());
    assertThat(findings).isNotEmpty();
    for (Fault fault : findings) {
      assertWithMessage("%s", fault).that(fault.rule()).isEqualTo(rule.id());
    }
  }

  @ParameterizedTest
  @MethodSource("rules")
  void theGoodExampleBreaksNone(Rule rule) throws IOException {
    assertThat(findings(rule.examples().good())).isEmpty();
  }

  @ParameterizedTest
  @MethodSource("rules")
  void whatIsShownStandsInTheFile(Rule rule) {
    for (Example example : List.of(rule.examples().bad(), rule.examples().good())) {
      assertThat(example.shown().strip()).isNotEmpty();
      assertThat(example.file().replaceAll("(?m)^ +", ""))
          .contains(example.shown().replaceAll("(?m)^ +", ""));
    }
    assertThat(rule.examples().bad().shown()).isNotEqualTo(rule.examples().good().shown());
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

  /** What depends on all the branches of a step, or on the limits, is explained with the walk. */
  @Test
  void whateverTheReaderRefusesIsARule() {
    Set<String> unexplained = new TreeSet<>(Arrays.stream(Slip.values()).map(Slip::rule).toList());
    Rules.ALL.forEach(rule -> unexplained.remove(rule.id()));
    assertThat(Set.of(Slip.OPEN_BRANCHES.rule(), Slip.OVER_LIMIT.rule()))
        .containsAtLeastElementsIn(unexplained);
  }
}
