package quarterturn.fault;

import static com.google.common.truth.Truth.assertThat;

import org.junit.jupiter.api.Test;
import quarterturn.Draws;

/**
 * A session, a lesson and what is kept, with a fault at each of their calls to the disk: what was
 * acknowledged is there, and nothing that was never asked for.
 */
class FaultPointsTest {
  /** With the profile {@code deep}, 100,000 points in all; else a thousand and more. */
  private static final boolean DEEP = Draws.of(1) > 1;

  /** What a fault is put at: each call, or one of so many. */
  private static int step(int usual) {
    return DEEP ? 1 : usual;
  }

  private static int draws(int deep) {
    return DEEP ? deep : 1;
  }

  @Test
  void aSessionThatIsCutShort() {
    int points = new Points(() -> new SessionScenario(true)).sweep(step(3), draws(30));
    assertThat(points).isAtLeast(DEEP ? 20_000 : 400);
  }

  @Test
  void aSessionOnADiskThatFails() {
    int points = new Points(() -> new SessionScenario(false)).each(step(80), draws(5), 0);
    points += new Points(() -> new SessionScenario(true)).each(DEEP ? 10 : 400, 1, 1);
    assertThat(points).isAtLeast(DEEP ? 20_000 : 50);
  }

  @Test
  void aLessonThatIsCutShort() {
    int points = new Points(() -> new LessonScenario(false)).sweep(step(3), draws(20));
    if (DEEP) {
      points += new Points(() -> new LessonScenario(true)).sweep(step(3), draws(20));
    }
    assertThat(points).isAtLeast(DEEP ? 25_000 : 350);
  }

  @Test
  void aLessonOnADiskThatFails() {
    int points = new Points(() -> new LessonScenario(true)).each(step(80), draws(1), 0);
    points += new Points(() -> new LessonScenario(false)).each(step(80), draws(2), 1);
    assertThat(points).isAtLeast(DEEP ? 13_000 : 100);
  }

  @Test
  void instrumentsAndTheUsersFileOnADiskThatFailsOrIsCutShort() {
    Points points = new Points(KeptScenario::new);
    int cut = points.sweep(step(1), draws(80));
    int failed = points.each(step(10), draws(20), 0);
    assertThat(cut).isAtLeast(DEEP ? 8000 : 200);
    assertThat(failed).isAtLeast(DEEP ? 14_000 : 70);
  }
}
