package quarterturn.craft;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Random;
import org.apache.commons.math3.geometry.enclosing.EnclosingBall;
import org.apache.commons.math3.geometry.euclidean.twod.DiskGenerator;
import org.apache.commons.math3.geometry.euclidean.twod.Euclidean2D;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;
import org.junit.jupiter.api.Test;
import quarterturn.unit.Length;
import quarterturn.unit.NotUnderstoodException;

class StringArcTest {
  private static double[] arc(double radius, double spread, int strings) {
    return StringArc.dropMm(Length.mm(radius), Length.mm(spread), strings);
  }

  /** The second way: the circle through the board's top and two strings, and the rest lie on it. */
  @Test
  void allStringsLieOnOneCircle() {
    long seed = 241;
    Random random = new Random(seed);
    for (int i = 0; i < 200; i++) {
      double spread = 30 + 60 * random.nextDouble();
      double radius = spread * (0.6 + 8 * random.nextDouble());
      int strings = 3 + random.nextInt(6);
      double[] drops = arc(radius, spread, strings);
      EnclosingBall<Euclidean2D, Vector2D> circle =
          new DiskGenerator()
              .ballOnSupport(
                  List.of(
                      new Vector2D(-spread / 2, -drops[0]),
                      new Vector2D(0, 0),
                      new Vector2D(spread / 2, -drops[strings - 1])));
      assertWithMessage("seed %s, round %s", seed, i)
          .that(circle.getRadius())
          .isWithin(1e-7 * radius)
          .of(radius);
      for (int s = 0; s < strings; s++) {
        Vector2D string = new Vector2D(-spread / 2 + s * spread / (strings - 1), -drops[s]);
        assertWithMessage("seed %s, round %s, string %s", seed, i, s)
            .that(string.distance(circle.getCenter()))
            .isWithin(1e-7 * radius)
            .of(radius);
      }
    }
  }

  @Test
  void theArcIsTheSameFromBothSides() {
    long seed = 9;
    Random random = new Random(seed);
    for (int i = 0; i < 200; i++) {
      int strings = 2 + random.nextInt(7);
      double[] drops = arc(100 + 300 * random.nextDouble(), 57, strings);
      assertThat(drops).hasLength(strings);
      for (int s = 0; s < strings; s++) {
        assertWithMessage("seed %s, round %s", seed, i)
            .that(drops[s])
            .isWithin(1e-12)
            .of(drops[strings - 1 - s]);
      }
    }
    assertThat(arc(241, 57, 5)[2]).isEqualTo(0.0);
  }

  @Test
  void scalingAllLengthsScalesTheArc() {
    long seed = 10;
    Random random = new Random(seed);
    for (int i = 0; i < 200; i++) {
      double factor = 0.2 + 4 * random.nextDouble();
      double[] one = arc(241, 57, 4);
      double[] other = arc(241 * factor, 57 * factor, 4);
      for (int s = 0; s < 4; s++) {
        assertWithMessage("seed %s, round %s", seed, i)
            .that(other[s])
            .isWithin(1e-9)
            .of(one[s] * factor);
      }
    }
  }

  /** By the 3-4-5 triangle: 3 to the side of a radius of 5 lies 4 up, so 1 below the top. */
  @Test
  void aKnownTriangleIsFound() {
    assertThat(arc(5, 6, 2)).usingTolerance(1e-12).containsExactly(new double[] {1, 1}).inOrder();
  }

  @Test
  void aFlatBoardLosesNoDigits() {
    assertThat(arc(1e9, 60, 2)[0]).isWithin(1e-18).of(30 * 30 / 2e9);
  }

  @Test
  void whatCannotBeIsNamed() {
    assertThat(assertThrows(NotUnderstoodException.class, () -> arc(241, 57, 1)))
        .hasMessageThat()
        .isEqualTo("an arc needs two strings or more");
    for (double spread : new double[] {0, -57}) {
      assertThat(assertThrows(NotUnderstoodException.class, () -> arc(241, spread, 4)))
          .hasMessageThat()
          .isEqualTo("the spread of the strings must be above zero");
    }
    for (double radius : new double[] {28.5, 20, 0, -241}) {
      assertThat(assertThrows(NotUnderstoodException.class, () -> arc(radius, 57, 4)))
          .hasMessageThat()
          .isEqualTo("the radius must be larger than half the spread of the strings");
    }
    assertThat(arc(28.6, 57, 4)[0]).isLessThan(28.6);
  }
}
