package quarterturn.craft;

import quarterturn.unit.Length;
import quarterturn.unit.NotUnderstoodException;

/**
 * A shim in a neck pocket. It lifts one end of the neck's heel and tilts the neck about the other
 * end of the pocket: thickness t over pocket length l moves the board's plane at the saddle by
 * {@code t r / l}, where r is the way from that other end to the saddle. Similar triangles; small
 * angles.
 *
 * @param thickness zero or more
 * @param atFront at the pocket's front end, toward the headstock, where the plane is to go down at
 *     the saddle; else at its inner end
 * @param lever r, from the end about which the neck tilts to the saddle
 */
public record Shim(Length thickness, boolean atFront, Length lever) {
  /**
   * The shim for a change of the board's plane at the saddle.
   *
   * @param up how far the plane is to rise at the saddle; minus for down
   * @param pocket the pocket's length
   * @param toSaddle from the pocket's front edge to the saddle
   */
  public static Shim of(Length up, Length pocket, Length toSaddle) {
    if (!(pocket.mm() > 0)) {
      throw new NotUnderstoodException("the pocket's length must be above zero");
    }
    if (!(toSaddle.mm() > pocket.mm())) {
      throw new NotUnderstoodException(
          "the saddle must stand beyond the pocket, more than "
              + pocket
              + " from its front edge, not "
              + toSaddle);
    }
    boolean atFront = up.mm() < 0;
    double lever = atFront ? toSaddle.mm() - pocket.mm() : toSaddle.mm();
    return new Shim(Length.mm(Math.abs(up.mm()) * pocket.mm() / lever), atFront, Length.mm(lever));
  }
}
