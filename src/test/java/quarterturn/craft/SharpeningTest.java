package quarterturn.craft;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import quarterturn.reference.HoldsTo;
import quarterturn.reference.Reference;
import quarterturn.reference.Value;
import quarterturn.unit.Cents;
import quarterturn.unit.Force;
import quarterturn.unit.Length;
import quarterturn.unit.NotUnderstoodException;

/** How much pressing sharpens a string. */
class SharpeningTest {
  @Test
  @HoldsTo("intonation.press_sharpening")
  void sharpeningAgreesWithTheReference() {
    try (Reference reference = Reference.of("intonation.press_sharpening")) {
      Length nut = Length.mm(reference.inputs().number("nut_slot_mm"));
      assertThat(StringGauge.STEEL_PASCAL).isEqualTo(reference.inputs().number("E_Pa"));
      double tolerance = reference.tolerance("abs_cents");
      for (String key : reference.expected().keys()) {
        ReferenceString string = ReferenceString.of(key);
        Value wanted = reference.expected().at(key);
        Force tension = string.tension();
        Length steel = string.gauge().steel();
        double newtons = wanted.number("T_N");
        assertWithMessage(key).that(tension.newtons()).isWithin(newtons * 1e-6).of(newtons);
        double stretch = wanted.number("EA_N");
        assertThat(StringGauge.stretchNewtons(steel)).isWithin(stretch * 1e-6).of(stretch);
        double ratio = stretch / newtons;
        assertThat(ratio).isWithin(ratio * 1e-6).of(wanted.number("EA_over_T"));
        // To first order: the slope at no strain, for a strain of a hundred-thousandth.
        double slope = wanted.number("cents_per_strain_1e-5");
        assertThat(Cents.ofRatio(Math.sqrt(1 + ratio * 1e-9)).cents() * 1e4)
            .isWithin(slope * 1e-5)
            .of(slope);
        for (String action : wanted.keys()) {
          if (!action.startsWith("action")) {
            continue;
          }
          Length action12 = Length.parse(action.substring("action".length()));
          for (String fret : wanted.at(action).keys()) {
            Value cents = wanted.at(action).at(fret);
            int n = Integer.parseInt(fret);
            String where = reference.because() + " " + key + " " + action + " " + fret;
            assertWithMessage(where)
                .that(
                    Sharpening.of(string.scale(), tension, steel, nut, action12, n, Length.mm(0))
                        .cents())
                .isWithin(tolerance)
                .of(cents.number("stretch_cents"));
            assertWithMessage(where)
                .that(
                    Sharpening.of(string.scale(), tension, steel, nut, action12, n, Length.mm(0.5))
                        .cents())
                .isWithin(tolerance)
                .of(cents.number("with_0.5mm_press_behind"));
          }
        }
      }
    }
  }

  /** A second way: the string as a chain of a thousand short pieces, added up. */
  @Test
  void aChainOfShortPiecesGivesTheSame() {
    Scale scale = new Scale(Length.mm(648));
    Length steel = Length.mm(0.25);
    Force tension = Force.newtons(70);
    for (int fret : new int[] {1, 7, 12, 20}) {
      double saddle = 2 * 1.6 - 0.4;
      double open = chain(new double[][] {{0, 0.4}, {648, saddle}});
      double at = 648 * (1 - Math.pow(0.5, fret / 12.0));
      double pressed = chain(new double[][] {{0, 0.4}, {at, 0}, {648, saddle}});
      double area = Math.PI * 0.25e-3 * 0.25e-3 / 4;
      double tighter = 70 + StringGauge.STEEL_PASCAL * area * (pressed - open) / open;
      double cents = 600 * Math.log(tighter / 70) / Math.log(2);
      assertThat(
              Sharpening.of(
                      scale, tension, steel, Length.mm(0.4), Length.mm(1.6), fret, Length.mm(0))
                  .cents())
          .isWithin(1e-6)
          .of(cents);
    }
  }

  private static double chain(double[][] corners) {
    double length = 0;
    int pieces = 1000;
    for (int c = 1; c < corners.length; c++) {
      double dx = (corners[c][0] - corners[c - 1][0]) / pieces;
      double dy = (corners[c][1] - corners[c - 1][1]) / pieces;
      for (int i = 0; i < pieces; i++) {
        length += Math.sqrt(dx * dx + dy * dy);
      }
    }
    return length;
  }

  @Test
  void sharpensMoreWithHigherActionThickerCoreAndDeeperPress() {
    Scale scale = new Scale(Length.mm(648));
    Force tension = Force.newtons(70);
    double before = sharp(scale, tension, 0.25, 1.5, 0);
    assertThat(sharp(scale, tension, 0.25, 2.0, 0)).isGreaterThan(before);
    assertThat(sharp(scale, tension, 0.30, 1.5, 0)).isGreaterThan(before);
    assertThat(sharp(scale, tension, 0.25, 1.5, 0.1)).isGreaterThan(before);
    assertThat(sharp(scale, Force.newtons(140), 0.25, 1.5, 0)).isLessThan(before);
  }

  private static double sharp(
      Scale scale, Force tension, double core, double action, double behind) {
    return Sharpening.of(
            scale,
            tension,
            Length.mm(core),
            Length.mm(0.4),
            Length.mm(action),
            12,
            Length.mm(behind))
        .cents();
  }

  @Test
  void aStringPressedAtTheNutIsNoQuestion() {
    NotUnderstoodException error =
        assertThrows(
            NotUnderstoodException.class,
            () ->
                Sharpening.of(
                    new Scale(Length.mm(648)),
                    Force.newtons(70),
                    Length.mm(0.25),
                    Length.mm(0.4),
                    Length.mm(1.5),
                    0,
                    Length.mm(0)));
    assertThat(error).hasMessageThat().contains("fret 1 or more, not 0");
  }

  @Test
  void refusesAForceOrAFingerThatCannotBe() {
    Scale scale = new Scale(Length.mm(648));
    assertThat(
            assertThrows(
                NotUnderstoodException.class, () -> sharp(scale, Force.newtons(0), 0.25, 1.5, 0)))
        .hasMessageThat()
        .contains("tension must be above zero");
    assertThat(
            assertThrows(
                NotUnderstoodException.class,
                () -> sharp(scale, Force.newtons(70), 0.25, 1.5, -0.1)))
        .hasMessageThat()
        .contains("can't press a string up");
  }
}
