package quarterturn.craft;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;

import org.junit.jupiter.api.Test;
import quarterturn.procedure.kind.Kind;
import quarterturn.procedure.kind.Quantity;
import quarterturn.procedure.read.BoundsReader;
import quarterturn.procedure.read.Shelf;
import quarterturn.unit.Length;
import quarterturn.unit.Note;

/** What an instrument can be, against the bounds of readings and the kinds that are shipped. */
class PossibleTest {
  /** safety/bounds.yaml says the same of what a gauge or a rule may read. */
  @Test
  void readingsHaveTheSameBounds() {
    double relief = BoundsReader.of(Quantity.RELIEF).plausible().most();
    double action = BoundsReader.of(Quantity.ACTION).plausible().most();
    for (double sign : new double[] {-1, 1}) {
      assertThat(Possible.RELIEF.holds(sign * relief)).isTrue();
      assertThat(Possible.RELIEF.holds(sign * Math.nextUp(relief))).isFalse();
    }
    assertThat(Possible.ACTION.holds(action)).isTrue();
    assertThat(Possible.ACTION.holds(Math.nextUp(action))).isFalse();
    assertThat(Possible.ACTION.holds(-0.1)).isFalse();
    assertThat(Possible.GAP.holds(action)).isTrue();
  }

  @Test
  void everyKindIsPossible() throws Exception {
    for (Kind kind : new Shelf(null).rules().kinds().values()) {
      double scale = kind.scale().mm();
      assertWithMessage(kind.id()).that(Possible.SCALE.holds(scale)).isTrue();
      assertWithMessage(kind.id()).that(Possible.SCALE.holds(scale / Length.MM_PER_INCH)).isFalse();
      for (int i = 0; i < kind.strings().size(); i++) {
        double open = Temperament.ISO_16.of(Note.parse(kind.notes().get(i))).hertz();
        assertWithMessage(kind.id()).that(Possible.PITCH.holds(open)).isTrue();
        assertWithMessage(kind.id()).that(Possible.PITCH.holds(4 * open)).isTrue();
        if (kind.make().gauges().isEmpty()) {
          continue;
        }
        // Steel of 7850 kg/m3 weighs 0.00617 kg/m for a square millimetre of diameter (derived).
        double mm = kind.make().gauges().get(i).mm();
        double pull = 0.00617 * mm * mm * Math.pow(2 * scale / 1000 * open, 2);
        assertWithMessage(kind.id() + " " + i).that(Possible.PULL.holds(pull)).isTrue();
        assertWithMessage(kind.id() + " " + i).that(Possible.PULL.holds(16 * pull)).isFalse();
      }
    }
  }

  @Test
  void aDoubtNamesTheNumberWithThreeDigits() {
    assertThat(Possible.SADDLE_TRAVEL.holds(15)).isTrue();
    assertThat(Possible.SADDLE_TRAVEL.holds(-15.1)).isFalse();
    assertThat(Possible.SADDLE_TRAVEL.holds(Double.NaN)).isFalse();
    assertThat(Possible.SADDLE_TRAVEL.doubt(195.34))
        .isEqualTo("A saddle does not travel 195 mm: a bad string or a wrong reading.");
    assertThat(Possible.SADDLE_CHANGE.doubt(17_817_135.9)).contains(" 17800000 mm ");
  }
}
