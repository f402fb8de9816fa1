package quarterturn.unit;

import static com.google.common.truth.Truth.assertThat;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

class BracketTest {
  @Test
  void boundsThatCrossOrSayNothingAreRefused() {
    double inf = Double.POSITIVE_INFINITY;
    double[][] bad = {
      {0.35, 0.30}, {Double.NaN, 1}, {0, Double.NaN}, {-inf, inf}, {inf, inf}, {-inf, -inf}
    };
    for (double[] pair : bad) {
      assertThrows(NotUnderstoodException.class, () -> new Bracket(pair[0], pair[1]));
    }
  }

  @Test
  void itKnowsWhatItDoesNotKnow() {
    assertThat(Bracket.touches().noGap()).isTrue();
    assertThat(Bracket.lifts(0.05).noGap()).isTrue();
    assertThat(Bracket.passes(1).beyondGauge()).isTrue();
    assertThat(Bracket.passes(1).noGap()).isFalse();
    assertThat(new Bracket(0.3, 0.35).bounded()).isTrue();
    assertThat(Bracket.touches().bounded()).isFalse();
    assertThat(Bracket.passes(1).bounded()).isFalse();
  }

  @Test
  void itsMiddleAndWidth() {
    assertThat(new Bracket(0.3, 0.35).middleMm()).isWithin(1e-12).of(0.325);
    assertThat(new Bracket(0.3, 0.35).widthMm()).isWithin(1e-12).of(0.05);
    assertThat(Bracket.touches().middleMm()).isEqualTo(0.0);
    assertThat(Bracket.passes(1).middleMm()).isEqualTo(1.0);
    assertThat(Bracket.passes(1).widthMm()).isPositiveInfinity();
    assertThat(Bracket.lifts(0.05).widthMm()).isPositiveInfinity();
  }

  @Test
  void itPrintsTheDigitsOfItsLeaves() {
    assertThat(new Bracket(0.3, 0.35).toString()).isEqualTo("0.30 to 0.35 mm");
    assertThat(new Bracket(0.1 + 0.2, 0.7 - 0.35).toString()).isEqualTo("0.30 to 0.35 mm");
    assertThat(new Bracket(0.275, 0.325).toString()).isEqualTo("0.275 to 0.325 mm");
    assertThat(new Bracket(0.3048, 0.3556).toString()).isEqualTo("0.305 to 0.356 mm");
    assertThat(Bracket.touches().toString()).isEqualTo("touches (no gap)");
    assertThat(Bracket.lifts(0.05).toString()).isEqualTo("under 0.05 mm");
    assertThat(Bracket.passes(1).toString()).isEqualTo("over 1.00 mm");
    assertThat(new Bracket(-0.0, 0.05).toString()).isEqualTo("0.00 to 0.05 mm");
  }
}
