package quarterturn.craft;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.awt.geom.AffineTransform;
import java.awt.geom.Point2D;
import java.util.Random;
import org.junit.jupiter.api.Test;
import quarterturn.unit.Length;
import quarterturn.unit.NotUnderstoodException;

/** Derived: plane geometry. */
class ShimTest {
  /** Height of the board's plane above the pocket's floor; invented. */
  private static final double BOARD = 20;

  private static Shim shim(double up, double pocket, double toSaddle) {
    return Shim.of(Length.mm(up), Length.mm(pocket), Length.mm(toSaddle));
  }

  /** Where the board's plane stands at the saddle once the neck is turned about a corner. */
  private static double atSaddle(AffineTransform turned, double toSaddle) {
    Point2D nut = turned.transform(new Point2D.Double(-400, BOARD), null);
    Point2D end = turned.transform(new Point2D.Double(60, BOARD), null);
    double slope = (end.getY() - nut.getY()) / (end.getX() - nut.getX());
    return end.getY() + slope * (toSaddle - end.getX());
  }

  /**
   * The second way: points of the neck are turned about the pocket's other end, by the angle at
   * which its plane has moved enough at the saddle. The pocket goes from 0 to its length.
   */
  private static double turned(double up, double pocket, double toSaddle) {
    double pivot = up < 0 ? pocket : 0;
    double shimmed = pocket - pivot;
    double low = 0;
    double high = 0.2;
    for (int i = 0; i < 80; i++) {
      double angle = (low + high) / 2;
      AffineTransform neck = AffineTransform.getRotateInstance(up < 0 ? -angle : angle, pivot, 0);
      boolean more = Math.abs(atSaddle(neck, toSaddle) - BOARD) < Math.abs(up);
      low = more ? angle : low;
      high = more ? high : angle;
    }
    AffineTransform neck = AffineTransform.getRotateInstance(up < 0 ? -low : low, pivot, 0);
    return neck.transform(new Point2D.Double(shimmed, 0), null).getY();
  }

  @Test
  void aNeckTurnedAboutTheOtherEndOfItsPocketNeedsThatShim() {
    long seed = 16;
    Random random = new Random(seed);
    for (int i = 0; i < 300; i++) {
      double up = 6 * random.nextDouble() - 3;
      double pocket = 50 + 60 * random.nextDouble();
      double toSaddle = pocket + 100 + 300 * random.nextDouble();
      double thick = turned(up, pocket, toSaddle);
      assertWithMessage("seed %s, round %s", seed, i)
          .that(shim(up, pocket, toSaddle).thickness().mm())
          .isWithin(0.005 * thick + 1e-9)
          .of(thick);
      assertThat(shim(up, pocket, toSaddle).atFront()).isEqualTo(up < 0);
    }
  }

  /** The plane goes down by 2 mm about the inner end, 324 mm from the saddle: 2 * 76 / 324. */
  @Test
  void atTheFrontEndTheLeverIsShorterByThePocket() {
    assertThat(shim(-2, 76, 400).thickness().mm()).isWithin(5e-5).of(0.4691);
    assertThat(shim(-2, 76, 400).lever().mm()).isWithin(1e-12).of(324);
    assertThat(shim(2, 76, 400).thickness().mm()).isWithin(1e-12).of(0.38);
    assertThat(shim(2, 76, 400).lever().mm()).isWithin(1e-12).of(400);
  }

  @Test
  void noChangeNeedsNoShimAndLengthsScaleTogether() {
    assertThat(shim(0, 75, 300).thickness().mm()).isEqualTo(0.0);
    for (int up : new int[] {-2, 2}) {
      double one = shim(up, 75, 300).thickness().mm();
      assertThat(shim(2 * up, 150, 600).thickness().mm()).isWithin(1e-12).of(2 * one);
    }
  }

  @Test
  void aPocketHasALengthAndTheSaddleStandsBeyondIt() {
    for (double pocket : new double[] {0, -75}) {
      assertThat(assertThrows(NotUnderstoodException.class, () -> shim(1, pocket, 300)))
          .hasMessageThat()
          .isEqualTo("the pocket's length must be above zero");
    }
    for (double toSaddle : new double[] {75, 60, 0, -300}) {
      assertThat(assertThrows(NotUnderstoodException.class, () -> shim(1, 75, toSaddle)))
          .hasMessageThat()
          .startsWith("the saddle must stand beyond the pocket, more than 75 mm from its front");
    }
    assertThat(shim(-1, 75, 75.1).thickness().mm()).isGreaterThan(100);
  }
}
