package quarterturn.fault;

import static com.google.common.truth.Truth.assertThat;

import org.junit.jupiter.api.Test;
import quarterturn.Draws;

/**
 * A session, a lesson and what is kept, with a fault at each of their calls to the disk: what was
 * acknowledged is there, and nothing that was never asked for.
 */
class FaultPointsTest {
  /** A thousand points in all; with the profile {@code deep}, 100,000. */
  private static final int TIMES = Draws.of(1) > 1 ? 100 : 1;

  private static final int CUT = 320 * TIMES;
  private static final int FAILED = 48 * TIMES;
  private static final int FEW = 7 * TIMES;

  /** Points are spread evenly, so their number is only about the one that was asked for. */
  private static final double ABOUT = 0.8;

  private static void many(int points, int wanted) {
    assertThat(points).isAtLeast((int) (ABOUT * wanted));
  }

  @Test
  void aSessionThatIsCutShort() {
    many(new Points(() -> new SessionScenario(true)).sweep(CUT), CUT);
  }

  @Test
  void aSessionOnADiskThatFails() {
    many(new Points(() -> new SessionScenario(false)).each(FAILED, 0), FAILED);
    many(new Points(() -> new SessionScenario(true)).each(FEW, 1), FEW);
  }

  @Test
  void aLessonThatIsCutShort() {
    many(new Points(() -> new LessonScenario(false)).sweep(CUT), CUT);
  }

  @Test
  void aLessonOnADiskThatFails() {
    many(new Points(() -> new LessonScenario(true)).each(FAILED, 0), FAILED);
    many(new Points(() -> new LessonScenario(false)).each(FAILED, 1), FAILED);
  }

  @Test
  void instrumentsAndTheUsersFileOnADiskThatFailsOrIsCutShort() {
    Points points = new Points(KeptScenario::new);
    many(points.sweep(CUT), CUT);
    many(points.each(FAILED, 0), FAILED);
  }
}
