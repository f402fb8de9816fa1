package quarterturn.craft;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Random;
import org.junit.jupiter.api.Test;
import quarterturn.reference.HoldsTo;
import quarterturn.reference.Reference;
import quarterturn.reference.Value;
import quarterturn.unit.Cents;
import quarterturn.unit.Frequency;
import quarterturn.unit.Note;

class PartialsTest {
  private static final double RATE = 24000;
  private static final int SAMPLES = 14400;

  @Test
  @HoldsTo("pitch.test_tones")
  void stiffStringsSoundAsTheReferenceSays() {
    try (Reference tones = Reference.of("pitch.test_tones")) {
      double acf = tones.tolerance("acf_abs_cents");
      for (String tone : tones.expected().keys()) {
        // Such as E1_B0.0002: note, then inharmonicity.
        String[] parts = tone.split("_B", -1);
        Frequency first = Temperament.ISO_16.of(Note.parse(parts[0]));
        Stiffness stiff = new Stiffness(Double.parseDouble(parts[1]));
        Value row = tones.expected().at(tone);
        String because = tone + ", " + tones.because();
        double[] partials = row.numbers("partials_hz");
        assertThat(partials.length).isEqualTo(6);
        for (int n = 1; n <= partials.length; n++) {
          assertWithMessage(because)
              .that(partial(stiff, first, n))
              .isWithin(tones.tolerance("partials_rel") * partials[n - 1])
              .of(partials[n - 1]);
        }
        assertWithMessage(because)
            .that(stiff.sharpness(10).cents())
            .isWithin(1e-6)
            .of(row.number("partial10_cents_sharp"));
        assertWithMessage(because)
            .that(stiff.sharpness(2).cents())
            .isWithin(1e-6)
            .of(row.number("harmonic12_over_2f1_cents"));
        assertWithMessage(because)
            .that(heard(stiff, first))
            .isWithin(acf)
            .of(row.number("autocorrelation_bias_cents"));
      }
    }
  }

  /** The n-th partial in hertz: so much sharp of n times the first. */
  private static double partial(Stiffness stiff, Frequency first, int n) {
    return first.hertz() * n * stiff.sharpness(n).ratio();
  }

  /** How much too sharp a meter is that looks for the best period of such a tone, in cents. */
  private static double heard(Stiffness stiff, Frequency first) {
    double[] tone = new double[SAMPLES];
    for (int n = 1; n <= 10; n++) {
      double step = 2 * Math.PI * partial(stiff, first, n) / RATE;
      for (int i = 0; i < SAMPLES; i++) {
        tone[i] += Math.sin(step * i + 0.7 * n) / n;
      }
    }
    int about = (int) Math.round(RATE / first.hertz());
    int best = about;
    for (int lag = about - 20; lag <= about + 20; lag++) {
      best = alike(tone, lag) > alike(tone, best) ? lag : best;
    }
    double before = alike(tone, best - 1);
    double after = alike(tone, best + 1);
    double peak = best + (before - after) / 2 / (before - 2 * alike(tone, best) + after);
    return Cents.ofRatio(RATE / peak / first.hertz()).cents();
  }

  /** The normalised autocorrelation of a tone at a lag in samples. */
  private static double alike(double[] tone, int lag) {
    double cross = 0;
    double early = 0;
    double late = 0;
    for (int i = 0; i + lag < tone.length; i++) {
      cross += tone[i] * tone[i + lag];
      early += tone[i] * tone[i];
      late += tone[i + lag] * tone[i + lag];
    }
    return cross / Math.sqrt(early * late);
  }

  /** The second way: f_n^2 (1 + B) = f_1^2 n^2 (1 + B n^2), without a root. */
  @Test
  void partialsFollowTheStiffStringsLaw() {
    long seed = 64;
    Random random = new Random(seed);
    for (int i = 0; i < 300; i++) {
      double b = 1e-3 * random.nextDouble();
      Stiffness stiff = new Stiffness(b);
      Frequency first = new Frequency(30 + 300 * random.nextDouble());
      int n = 1 + random.nextInt(12);
      double partial = partial(stiff, first, n);
      assertWithMessage("seed %s, round %s", seed, i)
          .that(partial * partial * (1 + b))
          .isWithin(1e-9 * partial * partial)
          .of(first.hertz() * first.hertz() * n * n * (1 + b * n * n));
    }
  }

  @Test
  void aStringWithoutStiffnessIsHarmonic() {
    Stiffness none = new Stiffness(0);
    assertThat(none.sharpness(7).cents()).isEqualTo(0.0);
    for (double no : new double[] {-1e-9, Double.NaN}) {
      IllegalArgumentException e =
          assertThrows(IllegalArgumentException.class, () -> new Stiffness(no));
      assertThat(e).hasMessageThat().isEqualTo("an inharmonicity must be finite and not negative");
    }
  }
}
