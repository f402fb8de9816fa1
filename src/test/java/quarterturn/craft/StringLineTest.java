package quarterturn.craft;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Random;
import org.apache.commons.math3.geometry.euclidean.twod.Line;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import quarterturn.unit.Length;
import quarterturn.unit.NotUnderstoodException;

class StringLineTest {
  private static final Held HELD = Held.at(17, 7);

  private static Neck any(Random random) {
    Scale scale = new Scale(Length.mm(500 + 500 * random.nextDouble()));
    Length relief = Length.mm((random.nextDouble() - 0.3) * 1.2);
    return Neck.uniform(scale, 17, relief, HELD);
  }

  /** The second way: plane geometry, a line through two points met by a plumb line. */
  private static double over(Vector2D from, Vector2D to, double x) {
    Line string = new Line(from, to, 1e-12);
    Line plumb = new Line(new Vector2D(x, -1000), new Vector2D(x, 1000), 1e-12);
    return string.intersection(plumb).getY();
  }

  @Test
  void clearancesAgreeWithPlaneGeometry() {
    long seed = 3;
    Random random = new Random(seed);
    for (int i = 0; i < 300; i++) {
      Neck neck = any(random);
      double nut = random.nextDouble();
      double saddle = 8 * random.nextDouble();
      StringLine line = new StringLine(neck, Length.mm(nut), Length.mm(saddle));
      Vector2D end = new Vector2D(neck.scale().mm(), saddle);
      int n = 2 + random.nextInt(23);
      double x = neck.scale().fretMm(n);
      double open = over(new Vector2D(0, neck.fretTopMm(0) + nut), end, x) - neck.fretTopMm(n);
      assertWithMessage("seed %s, round %s", seed, i).that(line.openMm(n)).isWithin(1e-8).of(open);
      int k = 1 + random.nextInt(n - 1);
      double stopped =
          over(new Vector2D(neck.scale().fretMm(k), neck.fretTopMm(k)), end, x) - neck.fretTopMm(n);
      assertWithMessage("seed %s, round %s", seed, i)
          .that(Stopped.mm(line, k, n))
          .isWithin(1e-8)
          .of(stopped);
    }
  }

  @Test
  void theActionWantedIsTheActionGot() {
    long seed = 4;
    Random random = new Random(seed);
    for (int i = 0; i < 300; i++) {
      Neck neck = any(random);
      int fret = 1 + random.nextInt(24);
      Length nut = Length.mm(random.nextDouble());
      Length action = Length.mm(4 * random.nextDouble());
      StringLine line = StringLine.withAction(neck, nut, fret, action);
      assertThat(line.nutHeight()).isEqualTo(nut);
      assertThat(line.neck()).isEqualTo(neck);
      assertWithMessage("seed %s, round %s", seed, i)
          .that(line.openMm(fret))
          .isWithin(1e-9)
          .of(action.mm());
    }
  }

  @Test
  void theStringStandsInItsSlot() {
    Neck neck = Neck.uniform(new Scale(Length.inches(34)), 17, Length.mm(0.3), HELD);
    StringLine line = new StringLine(neck, Length.mm(0.5), Length.mm(3));
    assertThat(line.openMm(0)).isWithin(1e-12).of(0.5);
  }

  /** The second way for the gain: bend the neck a little more and look at the action. */
  @Test
  void theGainIsTheChangeOfActionForAChangeOfRelief() {
    long seed = 5;
    Random random = new Random(seed);
    for (int i = 0; i < 300; i++) {
      Neck neck = any(random);
      int fret = 1 + random.nextInt(24);
      double more = 0.1 + random.nextDouble();
      Neck bent =
          Neck.uniform(neck.scale(), neck.joint(), Length.mm(neck.relief(HELD).mm() + more), HELD);
      double before = new StringLine(neck, Length.mm(0.5), Length.mm(3)).openMm(fret);
      double after = new StringLine(bent, Length.mm(0.5), Length.mm(3)).openMm(fret);
      assertWithMessage("seed %s, round %s", seed, i)
          .that(StringLine.actionPerRelief(neck, fret, HELD))
          .isWithin(1e-8)
          .of((after - before) / more);
    }
  }

  @Test
  void scalingAllLengthsScalesAllClearances() {
    long seed = 6;
    Random random = new Random(seed);
    for (int i = 0; i < 200; i++) {
      double factor = 0.3 + 3 * random.nextDouble();
      Scale one = new Scale(Length.mm(648));
      Scale other = new Scale(Length.mm(648 * factor));
      StringLine small =
          StringLine.withAction(
              Neck.uniform(one, 17, Length.mm(0.3), HELD), Length.mm(0.5), 12, Length.mm(2));
      StringLine large =
          StringLine.withAction(
              Neck.uniform(other, 17, Length.mm(0.3 * factor), HELD),
              Length.mm(0.5 * factor),
              12,
              Length.mm(2 * factor));
      int n = 2 + random.nextInt(22);
      int k = 1 + random.nextInt(n - 1);
      assertWithMessage("seed %s, round %s", seed, i)
          .that(large.openMm(n))
          .isWithin(1e-9)
          .of(small.openMm(n) * factor);
      assertWithMessage("seed %s, round %s", seed, i)
          .that(Stopped.mm(large, k, n))
          .isWithin(1e-9)
          .of(Stopped.mm(small, k, n) * factor);
      assertThat(StringLine.actionPerRelief(large.neck(), 12, HELD))
          .isWithin(1e-9)
          .of(StringLine.actionPerRelief(small.neck(), 12, HELD));
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {0, -1})
  void actionIsReadAtAFret(int fret) {
    Neck neck = Neck.straight(new Scale(Length.mm(648)), 17);
    NotUnderstoodException e =
        assertThrows(
            NotUnderstoodException.class,
            () -> StringLine.withAction(neck, Length.mm(0.5), fret, Length.mm(2)));
    assertThat(e).hasMessageThat().isEqualTo("action is read at fret 1 or beyond, not at " + fret);
  }
}
