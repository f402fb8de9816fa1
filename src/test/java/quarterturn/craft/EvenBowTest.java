package quarterturn.craft;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quarterturn.unit.Bracket;
import quarterturn.unit.Length;

/** The bow of parts of a neck against a repairer's table of shares, derived apart from this. */
class EvenBowTest {
  /**
   * Shares of the relief by a repairer's table, reckoned apart from this program by the same
   * geometry and printed with two digits; relief is read at 8 on a bass, at 7 on a guitar.
   */
  @ParameterizedTest
  @CsvSource({
    "863.6, 17, 8, 1, 7, 4, 0.24",
    "863.6, 17, 8, 5, 12, 8, 0.19",
    "863.6, 17, 8, 7, 17, 11, 0.27",
    "863.6, 17, 8, 12, 20, 15, 0.08",
    "647.7, 16, 7, 1, 7, 4, 0.25",
    "647.7, 16, 7, 5, 12, 8, 0.21",
    "647.7, 16, 7, 7, 16, 11, 0.25",
    "647.7, 16, 7, 12, 22, 16, 0.08",
    "645, 14, 7, 1, 7, 4, 0.31",
    "645, 14, 7, 5, 12, 8, 0.25",
    "645, 14, 7, 7, 14, 11, 0.19",
    "645, 14, 7, 12, 20, 15, 0.03",
    "889, 20, 8, 1, 7, 4, 0.19",
    "889, 20, 8, 5, 12, 8, 0.16",
    "889, 20, 8, 7, 20, 11, 0.30",
  })
  void anEvenBowGivesTheSharesOfTheTable(
      double scaleMm, int joint, int readAt, int low, int high, int over, double share) {
    Scale scale = new Scale(Length.mm(scaleMm));
    Held part = new Held(low, high, over);
    assertWithMessage("%s on %s", part, joint)
        .that(EvenBow.share(scale, joint, Held.at(joint, readAt), part))
        .isWithin(0.006)
        .of(share);
  }

  /** A second way: the same shares from a beam whose deflection is summed in small steps. */
  @Test
  void aBeamBentInSmallStepsGivesTheSameShares() {
    Scale scale = new Scale(Length.inches(34));
    NumericBeam beam = NumericBeam.bent(scale.fretMm(17), 600, x -> 1e-6);
    Held whole = Held.at(17, 8);
    for (Held part : new Held[] {new Held(1, 7, 4), new Held(5, 12, 8), new Held(7, 17, 11)}) {
      assertThat(EvenBow.share(scale, 17, whole, part))
          .isWithin(1e-4)
          .of(gap(beam, scale, part) / gap(beam, scale, whole));
    }
  }

  private static double gap(NumericBeam beam, Scale scale, Held held) {
    return beam.gap(
        scale.fretMm(held.low()), scale.fretMm(held.readAt()), scale.fretMm(held.high()));
  }

  @Test
  void theWindowOfAPartIsItsShareAndAGaugeToBothSides() {
    Window window = EvenBow.window(0.25, new Bracket(0.40, 0.60), 0.05);
    assertThat(window.lowMm()).isWithin(1e-9).of(0.05);
    assertThat(window.highMm()).isWithin(1e-9).of(0.20);
  }

  @Test
  void aNeckThatTouchesLeavesItsPartsNoBow() {
    assertThat(EvenBow.window(0.25, Bracket.touches(), 0.05)).isEqualTo(new Window(0, 0.05));
  }
}
