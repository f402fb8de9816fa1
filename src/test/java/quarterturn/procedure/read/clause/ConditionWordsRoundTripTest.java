package quarterturn.procedure.read.clause;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quarterturn.procedure.Branch;
import quarterturn.procedure.Step;
import quarterturn.procedure.condition.Condition;
import quarterturn.procedure.condition.ConditionWords;
import quarterturn.procedure.condition.Feel;
import quarterturn.procedure.condition.RandomConditions;
import quarterturn.procedure.condition.Role;
import quarterturn.procedure.read.BoundsReader;
import quarterturn.procedure.read.Shelf;

/** The words of a condition are read as the very same condition. */
class ConditionWordsRoundTripTest {
  private static void readBack(Condition condition) throws MisreadException {
    String words = ConditionWords.of(condition);
    assertWithMessage(words)
        .that(ConditionParser.parse(words, BoundsReader::of).condition())
        .isEqualTo(condition);
  }

  @Test
  void everyConditionOfTheShippedProcedures() throws Exception {
    int seen = 0;
    for (String id : new Shelf(null).procedures()) {
      for (Step step : new Shelf(null).load(id).main().steps().values()) {
        for (Condition condition : conditions(step).toList()) {
          readBack(condition);
          seen++;
        }
      }
    }
    assertThat(seen).isAtLeast(100);
  }

  private static Stream<Condition> conditions(Step step) {
    Branch.Fork fork =
        step instanceof Step.Tell tell
            ? tell.then()
            : step instanceof Step.Measure measure
                ? measure.then()
                : step instanceof Step.Compute compute
                    ? compute.then()
                    : step instanceof Step.Adjust adjust
                        ? adjust.then()
                        : step instanceof Step.Call call ? call.then() : Branch.Fork.to("");
    // What a step expects may be a list, each of which is written by itself.
    Stream<Condition> expected =
        step.words().expects() instanceof Condition.Any any
            ? any.parts().stream()
            : Stream.ofNullable(step.words().expects());
    return Stream.concat(fork.branches().stream().map(Branch::when), expected);
  }

  @Test
  void anyConditionThatAFileCanHold() throws MisreadException {
    RandomConditions conditions = new RandomConditions(20270301);
    Set<Class<?>> kinds = new HashSet<>();
    for (int i = 0; i < 20_000; i++) {
      Condition condition = conditions.next();
      kinds.add(condition.getClass());
      readBack(condition);
    }
    int atoms = Condition.Atom.class.getPermittedSubclasses().length;
    assertThat(kinds).hasSize(Condition.class.getPermittedSubclasses().length - 1 + atoms);
  }

  @ParameterizedTest
  @CsvSource({
    "relief was read",
    "relief differs by at most 0.1 mm",
    "relief does not repeat within 0.05 mm",
    "relief below target or leans into target",
    "humidity at least 60.5 %",
    "relief at least 0.254 mm and role is beginner",
    "turned in all less than 1/3 turn",
    "neck gave no answer or moved the wrong way",
    "neck moved as told less than 1 time",
    "no action below target or above target",
    "not every action in target",
    "rod does not seem dead or fully loose",
    "not called by setup or season",
    "rod-place is not pocket or sound-hole",
  })
  void theWordsAreThoseOfAFile(String words) throws MisreadException {
    assertThat(ConditionWords.of(ConditionParser.parse(words, BoundsReader::of).condition()))
        .isEqualTo(words);
  }

  @Test
  void whatNoFileCanHoldIsToldWithBrackets() {
    Condition a = new Condition.Is(Role.BEGINNER);
    Condition b = new Condition.Felt(Feel.STIFF);
    assertThat(ConditionWords.of(new Condition.Not(a))).isEqualTo("not (role is beginner)");
    assertThat(ConditionWords.of(new Condition.Any(List.of(a, b))))
        .isEqualTo("(role is beginner or rod felt stiff)");
    assertThat(
            ConditionWords.of(
                new Condition.Not(new Condition.Any(List.of(a, new Condition.All(List.of(a, b)))))))
        .isEqualTo("not ((role is beginner or (role is beginner and rod felt stiff)))");
  }
}
