package quarterturn.reference;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;

import java.io.IOException;
import org.junit.jupiter.api.Test;
import quarterturn.craft.Window;
import quarterturn.craft.rod.Prior;
import quarterturn.procedure.UnreadableException;
import quarterturn.procedure.kind.BridgeKind;
import quarterturn.procedure.kind.Kind;
import quarterturn.procedure.kind.Style;
import quarterturn.procedure.read.Shelf;

/** What rests on an estimate or on common practice without a source. */
class EstimatesReferenceTest {
  private static final double NORMAL_95 = 1.6448536269514722;

  @Test
  @HoldsTo("rod.prior")
  void theRodsPriorIsTheRecommendedOneAndNoSurerThanTheEstimate() {
    try (Reference prior = Reference.of("rod.prior")) {
      double tolerance = prior.tolerance("abs");
      Value recommended = prior.expected().at("recommended");
      assertThat(Prior.BASS.mmPerQuarter())
          .isEqualTo(recommended.number("bass_mean_mm_per_quarter"));
      assertThat(Prior.GUITAR.mmPerQuarter())
          .isEqualTo(recommended.number("guitar_mean_mm_per_quarter"));
      assertThat(Prior.SIGMA * Prior.BASS.mmPerQuarter())
          .isWithin(1e-12)
          .of(recommended.number("bass_sd"));
      assertThat(Prior.SIGMA * Prior.GUITAR.mmPerQuarter())
          .isWithin(1e-12)
          .of(recommended.number("guitar_sd"));
      assertThat(recommended.text("distribution")).contains("lognormal, sigma " + Prior.SIGMA);
      for (Prior kind : Prior.values()) {
        Value estimate = prior.expected().at(kind.word());
        double spread = Math.exp(NORMAL_95 * Prior.SIGMA);
        assertWithMessage(prior.because())
            .that(kind.mmPerQuarter())
            .isWithin(tolerance)
            .of(estimate.number("median"));
        assertThat(kind.mmPerQuarter() / spread).isAtMost(estimate.number("p05") + tolerance);
        assertThat(kind.mmPerQuarter() * spread).isAtLeast(estimate.number("p95") - tolerance);
        double sigma = estimate.number("lognormal_sigma");
        assertThat(Prior.SIGMA).isAtLeast(sigma);
        // A lognormal of the estimate's own spread has the estimate's mean and deviation.
        double mean = kind.mmPerQuarter() * Math.exp(sigma * sigma / 2);
        assertThat(mean).isWithin(tolerance).of(estimate.number("mean"));
        assertThat(mean * Math.sqrt(Math.expm1(sigma * sigma)))
            .isWithin(tolerance)
            .of(estimate.number("sd"));
      }
    }
  }

  /** Common practice, no source: the windows that ship agree with the usual ranges. */
  @Test
  @HoldsTo("targets.ranges")
  void theWindowsOfReliefLieInTheUsualRanges() throws IOException, UnreadableException {
    try (Reference targets = Reference.of("targets.ranges")) {
      for (Kind kind : new Shelf(null).load("relief").kinds().values()) {
        String family =
            kind.id().startsWith("bass")
                ? "bass_relief_mm"
                : kind.make().bridge() == BridgeKind.FIXED
                    ? "guitar_acoustic_relief_mm"
                    : "guitar_electric_relief_mm";
        double[] usual = targets.expected().numbers(family);
        for (Style style : kind.styles()) {
          Window window = kind.target(style).window();
          assertThat(window.lowMm()).isAtMost(usual[1]);
          assertThat(window.highMm()).isAtLeast(usual[0]);
        }
        double middle = kind.target(Style.MEDIUM).window().middleMm();
        assertThat(middle).isAtLeast(usual[0]);
        assertThat(middle).isAtMost(usual[1]);
      }
      for (String range : targets.expected().keys()) {
        double[] ends = targets.expected().numbers(range);
        assertWithMessage(range).that(ends).hasLength(2);
        assertWithMessage(range).that(ends[0]).isLessThan(ends[1]);
        assertWithMessage(range).that(ends[0]).isGreaterThan(0);
      }
      lowStringStandsHigher(targets, "bass_action12_E_mm", "bass_action12_G_mm");
      lowStringStandsHigher(
          targets, "guitar_electric_action12_low_mm", "guitar_electric_action12_high_mm");
      lowStringStandsHigher(
          targets, "guitar_acoustic_action12_low_mm", "guitar_acoustic_action12_high_mm");
    }
  }

  /** Common practice, no source: a thicker string swings wider, so it stands higher. */
  private static void lowStringStandsHigher(Reference targets, String low, String high) {
    double[] lowest = targets.expected().numbers(low);
    double[] highest = targets.expected().numbers(high);
    for (int end = 0; end < 2; end++) {
      assertWithMessage("%s above %s, %s", low, high, targets.because())
          .that(lowest[end])
          .isGreaterThan(highest[end]);
    }
  }
}
