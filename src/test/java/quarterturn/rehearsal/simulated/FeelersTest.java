package quarterturn.rehearsal.simulated;

import static com.google.common.truth.Truth.assertThat;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import quarterturn.unit.Bracket;

class FeelersTest {
  @Test
  void theGapLiesBetweenTheLeafThatPassesAndTheNext() {
    assertThat(Feelers.USUAL.read(0.31)).isEqualTo(new Bracket(0.30, 0.35));
    assertThat(Feelers.USUAL.read(0.30)).isEqualTo(new Bracket(0.30, 0.35));
    assertThat(Feelers.USUAL.read(0)).isEqualTo(Bracket.touches());
    assertThat(Feelers.USUAL.read(-0.4)).isEqualTo(Bracket.touches());
    assertThat(Feelers.USUAL.read(0.02)).isEqualTo(Bracket.lifts(0.05));
    assertThat(Feelers.USUAL.read(1.0)).isEqualTo(Bracket.passes(1.0));
    assertThat(new Feelers(0.1, 0.4).read(0.35)).isEqualTo(new Bracket(0.3, 0.4));
  }

  @Test
  void everyReadingHoldsTheGap() {
    long seed = 41;
    SplittableRandom random = new SplittableRandom(seed);
    for (int i = 0; i < 2000; i++) {
      double gap = -0.5 + 2 * random.nextDouble();
      Bracket reading = Feelers.USUAL.read(gap);
      assertThat(reading.lowMm()).isAtMost(gap + 1e-9);
      assertThat(reading.highMm()).isAtLeast(gap - 1e-9);
    }
  }

  @Test
  void aSetHasAtLeastOneLeaf() {
    assertThrows(IllegalArgumentException.class, () -> new Feelers(0, 1));
    assertThrows(IllegalArgumentException.class, () -> new Feelers(0.1, 0.05));
  }
}
