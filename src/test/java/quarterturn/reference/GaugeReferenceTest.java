package quarterturn.reference;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;

import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import quarterturn.unit.BracketParser;
import quarterturn.unit.Length;

/** Thickness gauges, and what stands in for them. */
class GaugeReferenceTest {
  /** ID-1 cards are known in inches too: 3.370 in wide, 2.125 in high (ISO/IEC 7810, rounded). */
  @Test
  @HoldsTo("gauge.card")
  void aBankCardIsAsThickAsItsStandardSays() {
    try (Reference card = Reference.of("gauge.card")) {
      assertThat(BracketParser.CARD.lowMm()).isEqualTo(card.expected().number("min_mm"));
      assertThat(BracketParser.CARD.highMm()).isEqualTo(card.expected().number("max_mm"));
      assertThat(BracketParser.CARD.middleMm())
          .isWithin(1e-12)
          .of(card.expected().number("nominal_mm"));
      assertThat(Length.inches(3.370).mm()).isWithin(0.01).of(card.expected().number("width_mm"));
      assertThat(Length.inches(2.125).mm()).isWithin(0.01).of(card.expected().number("height_mm"));
    }
  }

  /** The blades are read as people type them; two of them reach every step of 0.05 to 0.5 mm. */
  @Test
  @HoldsTo("gauge.feeler_sets")
  void twoLeavesOfACommonSetReachEveryStep() {
    try (Reference sets = Reference.of("gauge.feeler_sets")) {
      double[] thirteen = sets.expected().numbers("set13_mm");
      double[] twenty = sets.expected().numbers("set20_mm");
      assertThat(thirteen).hasLength(13);
      assertThat(twenty).hasLength(20);
      for (int i = 0; i < twenty.length; i++) {
        assertThat(twenty[i]).isWithin(1e-9).of(Length.parse("0.05").mm() * (i + 1));
      }
      TreeSet<Long> reached = new TreeSet<>();
      for (double one : thirteen) {
        for (double other : thirteen) {
          reached.add(Math.round(one * 100));
          if (one != other) {
            reached.add(Math.round((one + other) * 100));
          }
        }
      }
      TreeSet<Long> expected = new TreeSet<>();
      for (double reach : sets.expected().numbers("set13_reach_up_to_0.5_mm")) {
        expected.add(Math.round(reach * 100));
      }
      assertWithMessage(sets.because()).that(reached.headSet(50L, true)).isEqualTo(expected);
      Value inches = sets.expected().at("inch_equivalents");
      for (String leaf : inches.keys()) {
        assertWithMessage(sets.because())
            .that(Length.parse(leaf).mm())
            .isWithin(sets.tolerance("abs_mm"))
            .of(inches.number(leaf));
      }
    }
  }

  /** Thickness is mass per area over density: 80 g/m2 at 1.25 cm3/g is a tenth of a millimetre. */
  @Test
  @HoldsTo("gauge.paper")
  void aSheetOfPaperIsATenthOfAMillimetre() {
    try (Reference paper = Reference.of("gauge.paper")) {
      double gramsPerM2 = paper.inputs().number("grammage_g_m2");
      double[] volumes = paper.inputs().numbers("specific_volume_cm3_g");
      double[] sheets = paper.expected().numbers("thickness_mm");
      for (int i = 0; i < sheets.length; i++) {
        double micrometres = gramsPerM2 * volumes[i];
        assertWithMessage(paper.because())
            .that(Length.parse(micrometres / 1000 + " mm").mm())
            .isWithin(1e-9)
            .of(sheets[i]);
      }
      assertThat(3 * sheets[1]).isWithin(1e-9).of(paper.expected().number("stack_of_3_at_1.25_mm"));
      assertThat(500 * sheets[1]).isWithin(1e-9).of(paper.expected().number("ream_500_at_1.25_mm"));
    }
  }
}
