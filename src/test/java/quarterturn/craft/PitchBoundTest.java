package quarterturn.craft;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quarterturn.reference.HoldsTo;
import quarterturn.reference.Reference;
import quarterturn.reference.Value;
import quarterturn.unit.Cents;
import quarterturn.unit.Frequency;
import quarterturn.unit.NotUnderstoodException;

class PitchBoundTest {
  @Test
  @HoldsTo("pitch.crlb")
  void noMeterKnowsAPitchBetterThanTheReferenceSays() {
    try (Reference bound = Reference.of("pitch.crlb")) {
      Frequency pitch = new Frequency(bound.inputs().number("f_hz"));
      double rel = bound.tolerance("rel");
      for (String tone : bound.expected().keys()) {
        Matcher m = Pattern.compile("fs(\\d+)_T([\\d.]+)_snr(\\d+)dB").matcher(tone);
        assertThat(m.matches()).isTrue();
        double rate = Double.parseDouble(m.group(1));
        double seconds = Double.parseDouble(m.group(2));
        double decibels = Double.parseDouble(m.group(3));
        Value row = bound.expected().at(tone);
        String because = tone + ", " + bound.because();
        double hertz = row.number("sigma_hz");
        assertWithMessage(because)
            .that(PitchBound.hertz(rate, seconds, decibels))
            .isWithin(1e-7 * hertz)
            .of(hertz);
        double cents = PitchBound.cents(pitch, rate, seconds, decibels).cents();
        double expected = row.number("sigma_cents");
        assertWithMessage(because).that(cents).isWithin(rel * expected).of(expected);
        if (row.has("fisher_numeric_cents")) {
          double fisher = row.number("fisher_numeric_cents");
          assertWithMessage(because).that(cents).isWithin(rel * fisher).of(fisher);
          assertWithMessage(because)
              .that(byFisher(pitch, rate, seconds, decibels))
              .isWithin(0.005 * fisher)
              .of(fisher);
        }
      }
    }
  }

  /**
   * The second way: the Fisher matrix of amplitude, pitch and phase, summed over the samples and
   * inverted by another's library. The tone starts at a phase of 0.3.
   */
  private static double byFisher(Frequency pitch, double rate, double seconds, double decibels) {
    double amplitude = Math.sqrt(2 * Math.pow(10, decibels / 10));
    RealMatrix fisher = new Array2DRowRealMatrix(3, 3);
    for (int i = 0; i < Math.round(rate * seconds); i++) {
      double t = i / rate;
      double phase = 2 * Math.PI * pitch.hertz() * t + 0.3;
      double[] slope = {
        Math.cos(phase),
        -amplitude * Math.sin(phase) * 2 * Math.PI * t,
        -amplitude * Math.sin(phase)
      };
      RealMatrix column = new Array2DRowRealMatrix(slope);
      fisher = fisher.add(column.multiply(column.transpose()));
    }
    double variance = new LUDecomposition(fisher).getSolver().getInverse().getEntry(1, 1);
    return 1200 / Math.log(2) * Math.sqrt(variance) / pitch.hertz();
  }

  @Test
  void overManyPeriodsTheFisherMatrixAgrees() {
    Frequency pitch = new Frequency(440);
    for (double seconds : new double[] {0.1, 0.3, 0.7}) {
      double expected = byFisher(pitch, 8000, seconds, 40);
      assertThat(PitchBound.cents(pitch, 8000, seconds, 40).cents())
          .isWithin(0.01 * expected)
          .of(expected);
    }
  }

  /** Twenty decibels are a tenth; a longer tone helps by its length to the power 1.5. */
  @Test
  void itFallsWithLoudnessAndLength() {
    double one = PitchBound.hertz(48000, 0.25, 20);
    assertThat(PitchBound.hertz(48000, 0.25, 40)).isWithin(1e-9 * one).of(one / 10);
    assertThat(PitchBound.hertz(48000, 1, 20)).isWithin(1e-6 * one).of(one / 8);
    assertThat(PitchBound.hertz(4 * 48000, 0.25, 20)).isWithin(1e-6 * one).of(one / 2);
    assertThat(PitchBound.cents(new Frequency(40), 48000, 0.25, 40).cents())
        .isWithin(1e-6)
        .of(2 * PitchBound.cents(new Frequency(80), 48000, 0.25, 40).cents());
  }

  @Test
  void twoSamplesAreTheLeast() {
    // N (N^2 - 1) = 6, eta = 1.
    assertThat(PitchBound.hertz(2, 1, 0)).isWithin(1e-12).of(Math.sqrt(2) / Math.PI);
  }

  @ParameterizedTest
  @CsvSource({"48000, 0", "48000, -1", "1, 1", "0, 1", "-48000, -1", "NaN, 1"})
  void fewerTellNothing(double rate, double seconds) {
    NotUnderstoodException e =
        assertThrows(NotUnderstoodException.class, () -> PitchBound.hertz(rate, seconds, 20));
    assertThat(e)
        .hasMessageThat()
        .isEqualTo("a pitch can't be told from less than two samples of a tone");
  }

  /** What one cent is at a low E, and how much coarser the steps of a spectrum are. */
  @Test
  @HoldsTo("pitch.one_cent")
  void aCentIsAsSmallAsTheReferenceSays() {
    try (Reference cent = Reference.of("pitch.one_cent")) {
      double hertz = cent.inputs().number("f_hz");
      Value expected = cent.expected();
      double rel = cent.tolerance("rel");
      double sharper = hertz * new Cents(1).ratio();
      near(cent, sharper - hertz, expected.number("one_cent_hz"), rel);
      near(cent, hertz * new Cents(0.5).ratio() - hertz, expected.number("half_cent_hz"), rel);
      near(cent, 1000 / hertz, expected.number("period_ms"), rel);
      near(cent, 1e6 / hertz - 1e6 / sharper, expected.number("one_cent_of_period_us"), rel);
      double bin = expected.number("fft_bin_hz_at_48k_65536");
      near(cent, 48000 / 65536.0, bin, rel);
      assertThat(Cents.ofRatio(1 + bin / hertz).cents()).isGreaterThan(30.0);
    }
  }

  private static void near(Reference cent, double actual, double expected, double rel) {
    assertWithMessage(cent.because()).that(actual).isWithin(rel * expected).of(expected);
  }
}
