package quarterturn.craft;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import quarterturn.reference.HoldsTo;
import quarterturn.reference.Reference;
import quarterturn.reference.Value;
import quarterturn.unit.Length;
import quarterturn.unit.NotUnderstoodException;

class ScaleTest {
  @Test
  @HoldsTo({"fret.bass_34in", "fret.guitar_648mm"})
  void fretsStandWhereTheReferencesSay() {
    for (String id : new String[] {"fret.bass_34in", "fret.guitar_648mm"}) {
      try (Reference frets = Reference.of(id)) {
        Scale scale = new Scale(Length.mm(frets.inputs().number("scale_mm")));
        Value places = frets.expected().at("distance_from_nut_mm");
        for (String fret : places.keys()) {
          int n = Integer.parseInt(fret);
          double place = places.number(fret);
          double tolerance = frets.tolerance("abs_mm");
          assertWithMessage(frets.because()).that(scale.fretMm(n)).isWithin(tolerance).of(place);
          assertThat(scale.speakingMm(n)).isWithin(tolerance).of(scale.mm() - place);
        }
      }
    }
  }

  /** The second way: a twelfth root by Newton's rule, then the string shortened fret by fret. */
  @Test
  void repeatedDivisionFindsTheSameFrets() {
    double root = 1.06;
    for (int i = 0; i < 20; i++) {
      double eleventh = 1;
      for (int k = 0; k < 11; k++) {
        eleventh *= root;
      }
      root -= (eleventh * root - 2) / (12 * eleventh);
    }
    long seed = 34;
    Random random = new Random(seed);
    for (int i = 0; i < 100; i++) {
      Scale scale = new Scale(Length.mm(300 + 700 * random.nextDouble()));
      double[] frets = scale.fretsMm(Scale.MOST_FRETS);
      double left = scale.mm();
      for (int n = 1; n <= Scale.MOST_FRETS; n++) {
        left /= root;
        assertWithMessage("seed %s, round %s, fret %s", seed, i, n)
            .that(frets[n - 1])
            .isWithin(1e-9)
            .of(scale.mm() - left);
      }
    }
  }

  @Test
  void twelveFretsHalveTheStringEveryTime() {
    Scale scale = new Scale(Length.inches(34));
    assertThat(scale.fretMm(0)).isEqualTo(0.0);
    assertThat(scale.speakingMm(0)).isEqualTo(scale.mm());
    assertThat(scale.fretMm(12)).isWithin(1e-9).of(scale.mm() / 2);
    assertThat(scale.fretMm(24)).isWithin(1e-9).of(scale.mm() * 3 / 4);
    assertThat(scale.fretMm(36)).isWithin(1e-9).of(scale.mm() * 7 / 8);
    assertThat(Scale.share(12)).isWithin(1e-15).of(0.5);
  }

  @Test
  void allPlacesScaleWithTheScale() {
    long seed = 648;
    Random random = new Random(seed);
    for (int i = 0; i < 300; i++) {
      double factor = 0.2 + 4 * random.nextDouble();
      int n = random.nextInt(Scale.MOST_FRETS + 1);
      Scale one = new Scale(Length.mm(648));
      Scale other = new Scale(Length.mm(648 * factor));
      assertWithMessage("seed %s, round %s", seed, i)
          .that(other.fretMm(n))
          .isWithin(1e-9)
          .of(one.fretMm(n) * factor);
      assertWithMessage("seed %s, round %s", seed, i)
          .that(other.fretMm(n) + other.speakingMm(n))
          .isWithin(1e-9)
          .of(other.mm());
    }
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, -0.0, -863.6})
  void aScaleIsAboveZero(double mm) {
    NotUnderstoodException e =
        assertThrows(NotUnderstoodException.class, () -> new Scale(Length.mm(mm)));
    assertThat(e).hasMessageThat().isEqualTo("a scale length must be above zero");
  }

  @ParameterizedTest
  @ValueSource(ints = {-1, 37})
  void aFretBeyondTheEndsIsNamed(int n) {
    Scale scale = new Scale(Length.mm(648));
    String message = "a fret must lie between 0 and 36, not " + n;
    assertThat(assertThrows(NotUnderstoodException.class, () -> scale.fretMm(n)))
        .hasMessageThat()
        .isEqualTo(message);
    assertThat(assertThrows(NotUnderstoodException.class, () -> scale.speakingMm(n)))
        .hasMessageThat()
        .isEqualTo(message);
    assertThat(assertThrows(NotUnderstoodException.class, () -> scale.fretsMm(n)))
        .hasMessageThat()
        .isEqualTo(message);
  }
}
