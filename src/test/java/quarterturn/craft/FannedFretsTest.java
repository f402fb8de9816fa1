package quarterturn.craft;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Random;
import org.apache.commons.math3.stat.regression.SimpleRegression;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import quarterturn.reference.HoldsTo;
import quarterturn.reference.Reference;
import quarterturn.reference.Value;
import quarterturn.unit.Length;
import quarterturn.unit.NotUnderstoodException;

class FannedFretsTest {
  private static FannedFrets fan(double bass, double treble, int strings) {
    return new FannedFrets(Length.mm(bass), Length.mm(treble), strings);
  }

  /** Place of a fret along a string from the square fret, in millimetres. */
  private static double from(int square, FannedFrets frets, int string, int fret) {
    return frets.offsetMm(string, fret, square);
  }

  /** How far a fret leans from square, in degrees. */
  private static double slant(int square, FannedFrets frets, int fret, double spacing) {
    double[] mm = {frets.slantMm(fret, square)};
    return FannedFrets.slantDegrees(mm, Length.mm(spacing * (frets.strings() - 1)))[0];
  }

  /**
   * A second way (derived): nut, frets and saddle of a fan, drawn long enough, all meet the square
   * fret in one point, that where a string would have no length. From it and from the bass string's
   * frets, each a twelfth root of two nearer to the saddle, lines are drawn to the treble string.
   */
  @Test
  void everyFretsSlantIsDrawnFromTheFansPoint() {
    long seed = 38;
    Random random = new Random(seed);
    for (int i = 0; i < 100; i++) {
      double bass = 700 + 300 * random.nextDouble();
      double treble = bass - 5 - 100 * random.nextDouble();
      double spread = 40 + 40 * random.nextDouble();
      int square = random.nextInt(13);
      FannedFrets frets = fan(bass, treble, 5);
      double point = spread * bass / (bass - treble); // across, from the bass string
      double rest = bass;
      double[] toSaddle = new double[25];
      for (int n = 0; n <= 24; n++) {
        toSaddle[n] = rest;
        rest /= Math.pow(2, 1 / 12.0);
      }
      for (int n = 0; n <= 24; n++) {
        double atBass = toSaddle[square] - toSaddle[n];
        double atTreble = atBass * (point - spread) / point;
        String where = "seed " + seed + ", round " + i + ", fret " + n;
        assertWithMessage(where).that(from(square, frets, 1, n)).isWithin(1e-8).of(atBass);
        assertWithMessage(where).that(from(square, frets, 5, n)).isWithin(1e-8).of(atTreble);
        assertWithMessage(where)
            .that(frets.slantMm(n, square))
            .isWithin(1e-8)
            .of(atTreble - atBass);
      }
    }
  }

  @Test
  @HoldsTo("fret.multiscale_37_34")
  void aFanStandsWhereTheReferenceSays() {
    try (Reference fan = Reference.of("fret.multiscale_37_34")) {
      double mm = fan.tolerance("abs_mm");
      double spacing = fan.inputs().number("spacing_mm");
      int square = (int) fan.inputs().number("perpendicular_fret");
      FannedFrets frets =
          fan(
              fan.inputs().number("scale_low_mm"),
              fan.inputs().number("scale_high_mm"),
              (int) fan.inputs().number("strings"));
      int read = 0;
      for (Value string : fan.expected().at("strings").items()) {
        read++;
        int i = (int) string.number("string_low_to_high");
        assertThat(i).isEqualTo(read);
        assertThat(frets.scale(i).mm()).isWithin(mm).of(string.number("scale_mm"));
        Value places = string.at("x_along_from_perp_fret_mm");
        for (String fret : places.keys()) {
          assertWithMessage(fan.because())
              .that(from(square, frets, i, Integer.parseInt(fret)))
              .isWithin(mm)
              .of(places.number(fret));
        }
        assertThat(frets.scale(i).speakingMm(square))
            .isWithin(mm)
            .of(string.number("saddle_from_perp_fret_mm"));
      }
      assertThat(read).isEqualTo(frets.strings());
      Value slants = fan.expected().at("fret_slant_deg");
      for (String fret : slants.keys()) {
        assertWithMessage(fan.because())
            .that(slant(square, frets, Integer.parseInt(fret), spacing))
            .isWithin(fan.tolerance("abs_deg"))
            .of(slants.number(fret));
      }
    }
  }

  /** The second way: a straight line fitted through a fret's places has no rest and that slope. */
  @Test
  void everyFretIsStraightAcrossTheStrings() {
    long seed = 37;
    Random random = new Random(seed);
    for (int i = 0; i < 100; i++) {
      int strings = 3 + random.nextInt(7);
      double spacing = 8 + 12 * random.nextDouble();
      FannedFrets frets =
          fan(600 + 400 * random.nextDouble(), 550 + 400 * random.nextDouble(), strings);
      int square = random.nextInt(13);
      int fret = random.nextInt(25);
      SimpleRegression line = new SimpleRegression();
      for (int s = 1; s <= strings; s++) {
        line.addData((s - 1) * spacing, from(square, frets, s, fret));
      }
      assertWithMessage("seed %s, round %s", seed, i)
          .that(Math.sqrt(line.getSumSquaredErrors()))
          .isWithin(1e-5)
          .of(0);
      assertWithMessage("seed %s, round %s", seed, i)
          .that(slant(square, frets, fret, spacing))
          .isWithin(1e-6)
          .of(Math.toDegrees(Math.atan(line.getSlope())));
    }
  }

  @Test
  void theMirroredFanLeansTheOtherWay() {
    long seed = 7;
    Random random = new Random(seed);
    for (int i = 0; i < 200; i++) {
      double bass = 600 + 400 * random.nextDouble();
      double treble = 550 + 400 * random.nextDouble();
      int string = 1 + random.nextInt(5);
      assertWithMessage("seed %s, round %s", seed, i)
          .that(fan(treble, bass, 5).scale(string).mm())
          .isWithin(1e-9)
          .of(fan(bass, treble, 5).scale(6 - string).mm());
    }
  }

  @Test
  void equalScalesDoNotFan() {
    FannedFrets frets = fan(863.6, 863.6, 4);
    for (int string = 1; string <= 4; string++) {
      assertThat(frets.scale(string)).isEqualTo(new Scale(Length.mm(863.6)));
    }
  }

  @Test
  void twoStringsAreEnough() {
    FannedFrets frets = fan(900, 800, 2);
    assertThat(frets.scale(1).mm()).isEqualTo(900.0);
    assertThat(frets.scale(2).mm()).isEqualTo(800.0);
    NotUnderstoodException e = assertThrows(NotUnderstoodException.class, () -> fan(900, 800, 1));
    assertThat(e).hasMessageThat().isEqualTo("fanned frets need two strings or more");
  }

  @Test
  void bothScalesAreAboveZero() {
    for (double[] no : new double[][] {{0, 800}, {-1, 800}, {900, 0}, {900, -1}}) {
      NotUnderstoodException e =
          assertThrows(NotUnderstoodException.class, () -> fan(no[0], no[1], 5));
      assertThat(e).hasMessageThat().isEqualTo("a scale length must be above zero");
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 6})
  void aStringIsOneOfThem(int string) {
    FannedFrets frets = fan(900, 800, 5);
    NotUnderstoodException e =
        assertThrows(NotUnderstoodException.class, () -> frets.scale(string));
    assertThat(e).hasMessageThat().isEqualTo("a string must lie between 1 and 5, not " + string);
  }
}
