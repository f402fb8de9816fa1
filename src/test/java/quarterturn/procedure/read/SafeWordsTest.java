package quarterturn.procedure.read;

import static com.google.common.truth.Truth.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is told of cracks, and of the straightedge. Common practice, no source. */
class SafeWordsTest {
  private static String text(String procedure, String step) throws Exception {
    return new Shelf(null).load(procedure).main().step(step).words().text();
  }

  @ParameterizedTest
  @CsvSource({
    "relief, noise",
    "relief, damaged",
    "intake, damaged",
    "season, damaged",
    "strings, does-not-hold"
  })
  void afterACrackTheStringsAreSlackenedFully(String procedure, String step) throws Exception {
    String text = text(procedure, step);
    assertThat(text).containsMatch("[Ss]lacken (all|the) strings? until (they|it) hangs? limp");
    assertThat(text).doesNotContainMatch("by a whole tone");
  }

  @Test
  void theStraightedgeLiesTowardTheBridge() throws Exception {
    assertThat(text("buzz", "rocker"))
        .containsMatch("the fret you press.*the next two toward the\\s+bridge");
  }
}
