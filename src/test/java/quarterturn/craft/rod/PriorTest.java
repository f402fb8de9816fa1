package quarterturn.craft.rod;

import static com.google.common.truth.Truth.assertThat;

import org.junit.jupiter.api.Test;

/**
 * The response prior against its reference values. Status: estimate. Source: a beam estimate with
 * assumed inputs (20,000 draws; median 0.2208 mm for a bass, 0.1836 mm for a guitar, sigma of the
 * logarithm 0.4476 and 0.4409); no published response was found.
 */
class PriorTest {
  @Test
  void mediansAgreeWithTheBeamEstimate() {
    assertThat(Prior.BASS.mmPerQuarter()).isWithin(0.02).of(0.22075883);
    assertThat(Prior.GUITAR.mmPerQuarter()).isWithin(0.02).of(0.18364369);
  }

  @Test
  void theSpreadIsNoNarrowerThanTheEstimate() {
    assertThat(Prior.SIGMA).isAtLeast(0.44755723);
  }
}
