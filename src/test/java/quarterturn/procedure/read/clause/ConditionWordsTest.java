package quarterturn.procedure.read.clause;

import static com.google.common.truth.Truth.assertThat;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import quarterturn.procedure.Branch;
import quarterturn.procedure.Procedure;
import quarterturn.procedure.Step;
import quarterturn.procedure.condition.Condition;
import quarterturn.procedure.condition.ConditionWords;
import quarterturn.procedure.read.BoundsReader;
import quarterturn.procedure.read.Shelf;

/** What is said of a condition reads back as the same condition. */
class ConditionWordsTest {
  @ParameterizedTest
  @ValueSource(
      strings = {
        "relief touches or below target",
        "relief leans below target or leans above target",
        "relief leans into target",
        "relief was read",
        "relief differs by at most 0.1 mm",
        "relief does not repeat within 0.05 mm",
        "humidity below 40 %",
        "humidity at least 60.5 %",
        "rod-place is pocket and role is beginner",
        "play is not buzzes or clean",
        "turned today at least 1/2 turn",
        "turned in all less than 1 turn",
        "neck gave no answer or moved as told",
        "neck could not be seen to move at least 4 times",
        "neck moved the wrong way less than 2 times",
        "every action in target",
        "not every action in target",
        "some intonation above target or below target",
        "no action above target or below target",
        "called by setup or season",
        "not called by setup or season",
        "rod seems dead or reversed",
        "rod does not seem dead",
        "finer reached less than 3 times",
        "rod felt stiff or free",
      })
  void readsBack(String text) throws MisreadException {
    Condition condition = ConditionParser.parse(text, BoundsReader::of).condition();
    String words = ConditionWords.of(condition);
    assertThat(ConditionParser.parse(words, BoundsReader::of).condition()).isEqualTo(condition);
  }

  @Test
  void saysAChoice() {
    assertThat(ConditionWords.of(new Condition.Chosen("play", Set.of("b", "a"))))
        .isEqualTo("play is a or b");
  }

  @Test
  void readsBackEveryShippedCondition() throws Exception {
    int seen = 0;
    for (String id : List.of("setup", "season", "buzz", "neck-angle")) {
      for (Procedure procedure : new Shelf(null).load(id).procedures().values()) {
        for (Step step : procedure.steps().values()) {
          for (Branch branch : step.fork().branches()) {
            String words = ConditionWords.of(branch.when());
            assertThat(ConditionParser.parse(words, BoundsReader::of).condition())
                .isEqualTo(branch.when());
            seen++;
          }
        }
      }
    }
    assertThat(seen).isAtLeast(100);
  }
}
