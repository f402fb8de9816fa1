package quarterturn.craft.rod;

import quarterturn.unit.Turn;

/**
 * The limits on turning a rod.
 *
 * @param most in one move, without direction
 * @param fromAsFound the most it may stand from where it was found, without direction
 */
public record Allowed(Turn most, Turn fromAsFound) {
  /**
   * Whether {@code turn} is allowed with the rod {@code net} turns from as found; a turn back
   * towards as found always is.
   */
  boolean after(double net, double turn) {
    return Math.abs(net + turn) <= fromAsFound.turns() + 1e-9 || net * turn < 0;
  }
}
