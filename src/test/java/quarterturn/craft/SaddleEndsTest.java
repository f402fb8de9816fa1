package quarterturn.craft;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.awt.geom.AffineTransform;
import java.awt.geom.Line2D;
import java.util.Random;
import org.junit.jupiter.api.Test;
import quarterturn.unit.Length;
import quarterturn.unit.NotUnderstoodException;

/** Derived: plane geometry. */
class SaddleEndsTest {
  private static SaddleEnds ends(double lowest, double highest) {
    return SaddleEnds.of(Length.mm(lowest), Length.mm(highest), 12);
  }

  /** Height at a point of the line from the nut to the top of the saddle. */
  private static double height(double scale, double nut, double saddle, double at) {
    Line2D string = new Line2D.Double(0, nut, scale, saddle);
    double slope = (string.getY2() - string.getY1()) / (string.getX2() - string.getX1());
    return string.getY1() + slope * at;
  }

  /**
   * The second way: strings are drawn as lines over a saddle that is turned and pushed until its
   * ends stand where they should. The octave lies half way, by the definition of a fret.
   */
  @Test
  void stringsDrawnOverTheNewSaddleStandWhereTheyWereWanted() {
    Random random = new Random(12);
    for (int i = 0; i < 200; i++) {
      double scale = 500 + 400 * random.nextDouble();
      double nut = random.nextDouble();
      double[] wanted = {2 * random.nextDouble() - 1, 2 * random.nextDouble() - 1};
      int strings = 2 + random.nextInt(11);
      double spread = 40 + 30 * random.nextDouble();
      SaddleEnds ends = ends(wanted[0], wanted[1]);
      double slope = (ends.highest().mm() - ends.lowest().mm()) / spread;
      AffineTransform turned = new AffineTransform(1, slope, 0, 1, 0, ends.lowest().mm());
      for (int string = 0; string < strings; string++) {
        double before = 3 + random.nextDouble();
        double across = spread * string / (strings - 1);
        double[] top = {across, before};
        turned.transform(top, 0, top, 0, 1);
        double change =
            height(scale, nut, top[1], scale / 2) - height(scale, nut, before, scale / 2);
        double even = wanted[0] + (wanted[1] - wanted[0]) * across / spread;
        assertWithMessage("round %s, string %s", i, string).that(change).isWithin(1e-9).of(even);
        assertThat(ends.under(string, strings).mm()).isWithin(1e-9).of(top[1] - before);
      }
    }
  }

  /** On paper: 0.6 mm too high at fret 12 takes 1.2 mm off, and 4.5 mm of saddle leave 3.3. */
  @Test
  void whatIsTakenOffIsMissingAboveTheBridge() {
    SaddleEnds left = ends(-0.6, -0.2).left(Length.mm(4.5), Length.mm(3.5));
    assertThat(left.lowest().mm()).isWithin(1e-9).of(3.3);
    assertThat(left.highest().mm()).isWithin(1e-9).of(3.1);
  }

  @Test
  void aStringThatIsNotThereIsRefused() {
    assertThrows(NotUnderstoodException.class, () -> ends(0, 0).under(6, 6));
    assertThrows(NotUnderstoodException.class, () -> ends(0, 0).under(0, 1));
  }
}
