package quarterturn.procedure.check;

import static com.google.common.truth.Truth.assertThat;

import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;
import quarterturn.procedure.Shelf;

/** Whoever saves a file under {@code --watch} should have the answer at once. */
class CheckSpeedTest {
  /** All shipped procedures, in a process that has checked before. */
  private static final double BOUND_MS = 300;

  /**
   * Reading, walking and proving is all done anew each round; the best round is least disturbed.
   */
  private static final int ROUNDS = 40;

  @Test
  void allShippedProceduresAreCheckedWithinTheBound() throws IOException {
    List<String> ids = new Shelf(null).procedures();
    assertThat(ids.size()).isAtLeast(11);
    double best = Double.MAX_VALUE;
    for (int round = 0; round < ROUNDS && best >= BOUND_MS; round++) {
      long begin = System.nanoTime();
      Shelf shelf = new Shelf(null);
      Walks walks = new Walks();
      for (String id : ids) {
        assertThat(Checker.check(shelf, id, walks).findings()).isEmpty();
      }
      best = Math.min(best, (System.nanoTime() - begin) / 1e6);
    }
    assertThat(best).isLessThan(BOUND_MS);
  }
}
