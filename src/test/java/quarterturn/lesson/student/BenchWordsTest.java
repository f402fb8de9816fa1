package quarterturn.lesson.student;

import static com.google.common.truth.Truth.assertThat;

import org.junit.jupiter.api.Test;

/** A stop is understood wherever a frightened person types it. */
class BenchWordsTest {
  @Test
  void aStopIsTheFirstWordOfALineOrItsLast() {
    BenchWords.Stop bare = new BenchWords.Stop("", "");
    for (String typed : new String[] {"stop", "STOP!", " Stop. ", "stop!!"}) {
      assertThat(BenchWords.stop(typed, true)).isEqualTo(bare);
    }
    assertThat(BenchWords.stop("stop it creaks", true))
        .isEqualTo(new BenchWords.Stop("", "it creaks"));
    assertThat(BenchWords.stop("1 0.45 stop", false)).isEqualTo(new BenchWords.Stop("1 0.45", ""));
    assertThat(BenchWords.stop("0.70..0.75, Stop!", false))
        .isEqualTo(new BenchWords.Stop("0.70..0.75", ""));
    assertThat(BenchWords.stop("where the strings stop", true)).isNull();
    assertThat(BenchWords.stop("0.70 stops", false)).isNull();
    assertThat(BenchWords.stop("nonstop", false)).isNull();
  }
}
