package quarterturn.craft;

import quarterturn.unit.Length;
import quarterturn.unit.NotUnderstoodException;

/**
 * A shim at one end of a neck pocket tilts the board: thickness t over pocket length l moves the
 * board's plane at the saddle by {@code t D / l}, where D is the way from the pocket's front edge
 * to the saddle. Similar triangles; small angles.
 */
public final class Shim {
  private Shim() {}

  /**
   * Thickness of the shim for a change of the board's plane at the saddle, without direction.
   *
   * @param change of the saddle's height over the board
   */
  public static Length thickness(Length change, Length pocketLength, Length pocketToSaddle) {
    if (!(pocketLength.mm() > 0) || !(pocketToSaddle.mm() > 0)) {
      throw new NotUnderstoodException(
          "the pocket's length and its way to the saddle must be above zero");
    }
    return Length.mm(Math.abs(change.mm()) * pocketLength.mm() / pocketToSaddle.mm());
  }
}
