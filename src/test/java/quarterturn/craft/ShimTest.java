package quarterturn.craft;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Random;
import org.junit.jupiter.api.Test;
import quarterturn.unit.Length;
import quarterturn.unit.NotUnderstoodException;

class ShimTest {
  private static double shim(double change, double pocket, double toSaddle) {
    return Shim.thickness(Length.mm(change), Length.mm(pocket), Length.mm(toSaddle)).mm();
  }

  /** The second way: tilt the board by the shim's angle and see how far it moves at the saddle. */
  @Test
  void aTiltedBoardMovesThatFarAtTheSaddle() {
    long seed = 16;
    Random random = new Random(seed);
    for (int i = 0; i < 300; i++) {
      double change = 3 * random.nextDouble();
      double pocket = 50 + 60 * random.nextDouble();
      double toSaddle = 200 + 200 * random.nextDouble();
      double tilt = Math.atan(shim(change, pocket, toSaddle) / pocket);
      assertWithMessage("seed %s, round %s", seed, i)
          .that(toSaddle * Math.tan(tilt))
          .isWithin(1e-9)
          .of(change);
    }
  }

  @Test
  void aShimHasNoDirectionAndScalesWithAllLengths() {
    assertThat(shim(2, 75, 300)).isWithin(1e-12).of(0.5);
    assertThat(shim(-2, 75, 300)).isWithin(1e-12).of(0.5);
    assertThat(shim(4, 150, 600)).isWithin(1e-12).of(1);
    assertThat(shim(0, 75, 300)).isEqualTo(0.0);
  }

  @Test
  void lengthsAreAboveZero() {
    for (double[] no : new double[][] {{0, 300}, {-75, 300}, {75, 0}, {75, -300}}) {
      NotUnderstoodException e =
          assertThrows(NotUnderstoodException.class, () -> shim(1, no[0], no[1]));
      assertThat(e)
          .hasMessageThat()
          .isEqualTo("the pocket's length and its way to the saddle must be above zero");
    }
  }
}
